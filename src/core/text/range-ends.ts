import type { Read } from '../issue';
import { read, unread } from '../issue';
import { UNITS, type UnitId } from '../units';
import { readPlainQuantity, type QuantityReading, type ReadingOptions } from './quantity';
import type { Separator } from './range-separators';
import { isDocumented, splitValue } from './value';

/** The unit of one end serves the other; a bare multiplier ("0.5-10k") stays with its own number. */
const withSharedUnit = (
  first: string,
  second: string,
  unit: UnitId,
  options: ReadingOptions,
): [string, string, string?] => {
  const left = splitValue(first, options.decimal)?.unitText;
  const right = splitValue(second, options.decimal)?.unitText;
  if (left === undefined || right === undefined || left === right || (left !== '' && right !== ''))
    return [first, second];
  const lent = left || right;
  if (['k', 'K', 'M'].includes(lent)) return [first, second, `${lent} applies to one end only`];
  const note = isDocumented(lent, unit) ? undefined : `both ends in ${lent}`;
  return left === '' ? [`${first} ${lent}`, second, note] : [first, `${second} ${lent}`, note];
};

export interface Ends {
  low: QuantityReading;
  high: QuantityReading;
  note?: string;
}
export const readEnds = (text: string, at: Separator, unit: UnitId, options: ReadingOptions): Read<Ends> => {
  const before = text.slice(0, at.from).trim();
  const after = text.slice(at.to).trim();
  const [first, second, note] = withSharedUnit(before, after, unit, options);
  const low = readPlainQuantity(first, unit, text, options);
  if (!low.ok) return low;
  const high = readPlainQuantity(second, unit, text, options);
  if (!high.ok) return high;
  const misplaced = first === before ? undefined : readPlainQuantity(before, unit, text, options);
  // "1 - 0.4 kHz": in one unit the ends would be the wrong way round, in the documented one they are not.
  if (misplaced?.ok && low.value.si > high.value.si && misplaced.value.si <= high.value.si) {
    const readings = [`${before} ${UNITS[unit].label} to ${after}`, `${first} to ${after}`] as const;
    return unread({ code: 'ambiguous', given: text, readings });
  }
  return read({ low: low.value, high: high.value, note });
};

/** "10 ±3 °C" and "±10" are ranges about a middle. */
export const readAboutMiddle = (
  bare: string,
  unit: UnitId,
  given: string,
  options: ReadingOptions,
): Read<Ends> | undefined => {
  const at = bare.indexOf('±');
  if (at < 0) return undefined;
  const whole = readPlainQuantity(bare, unit, given, options);
  if (!whole.ok) return whole;
  const half = bare.slice(at + 1).trim();
  const [middle, width] = at === 0 ? ['0', half] : withSharedUnit(bare.slice(0, at).trim(), half, unit, options);
  const centre = splitValue(middle, options.decimal);
  const reach = splitValue(width, options.decimal);
  if (!centre || !reach || reach.value < 0 || (at > 0 && centre.unitText !== reach.unitText)) {
    return unread({ code: 'not-a-number', given, unit: UNITS[unit].label });
  }
  const end = (value: number): Read<QuantityReading> => readPlainQuantity(`${value} ${reach.unitText}`, unit, given);
  const low = end(centre.value - reach.value);
  const high = end(centre.value + reach.value);
  if (!low.ok) return low;
  return high.ok ? read({ low: low.value, high: high.value }) : high;
};
