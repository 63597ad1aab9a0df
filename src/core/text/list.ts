import type { Read } from '../issue';
import { read, unread } from '../issue';
import { fromSi, UNITS, type UnitId } from '../units';
import { LONGEST_TEXT, plainText, shown } from './characters';
import { splitItems } from './items';
import { readPlainQuantity, type ReadingOptions } from './quantity';
import { isDocumented } from './value';

const EMPTY = new Set(['', 'none', 'dc', '-', 'no', 'nil']);

/** "0.16; 0.5 Hz" in SI. "none", "DC" and a lone dash are the empty list. */
export const readList = (text: string, unit: UnitId, options: ReadingOptions = {}): Read<number[]> => {
  const given = shown(text);
  const { label } = UNITS[unit];
  if (text.length > LONGEST_TEXT) return unread({ code: 'not-a-number', given, unit: label });
  const plain = plainText(text);
  if (EMPTY.has(plain.toLowerCase())) return read([]);
  const items = splitItems(plain);
  const values: number[] = [];
  let bare: number | undefined;
  let otherUnit: string | undefined;
  for (const item of items) {
    const one = readPlainQuantity(item, unit, given, options);
    if (!one.ok) return one;
    const { si, unitText } = one.value;
    if (unitText === undefined) bare = fromSi(si, unit);
    else if (!isDocumented(unitText, unit)) otherUnit = unitText;
    values.push(si);
  }
  if (bare !== undefined && otherUnit !== undefined) {
    return unread({ code: 'ambiguous', given, readings: [`${bare} ${label}`, `${bare} ${otherUnit}`] });
  }
  return values.length > 0 ? read(values) : unread({ code: 'not-a-number', given, unit: label });
};
