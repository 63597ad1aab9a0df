import type { Curve } from '../curve';
import type { Problem, Read } from '../issue';
import { read, unread } from '../issue';
import type { UnitId } from '../units';
import { LONGEST_TEXT, plainText, shown } from './characters';
import { splitItems } from './items';
import { readPlainQuantity, type QuantityReading, type ReadingOptions } from './quantity';

/**
 * A curve written as pairs, "20:0.026; 50:0.16", also with `|` or line breaks between the pairs and with units on either side.
 * x must rise strictly.
 */
export const readCurve = (text: string, xUnit: UnitId, yUnit: UnitId, options: ReadingOptions = {}): Read<Curve> => {
  const bad = (rule: string): Read<Curve> => unread({ code: 'bad-curve', given: shown(text), rule });
  if (text.length > LONGEST_TEXT) return bad(`at most ${LONGEST_TEXT} characters`);
  const x: number[] = [];
  const y: number[] = [];
  for (const pair of splitItems(plainText(text))) {
    const colon = pair.indexOf(':');
    if (colon < 0 || pair.includes(':', colon + 1)) return bad('pairs x:y, separated by semicolons');
    const at = readPoint(pair.slice(0, colon).trim(), xUnit, pair, options);
    if (!at.ok) return at;
    const value = readPoint(pair.slice(colon + 1).trim(), yUnit, pair, options);
    if (!value.ok) return value;
    if (at.value.si <= (x.at(-1) ?? -Infinity)) return bad('x must rise from pair to pair');
    x.push(at.value.si);
    y.push(value.value.si);
  }
  return x.length > 0 ? read({ x, y }) : bad('at least one pair x:y');
};

const readPoint = (text: string, unit: UnitId, pair: string, options: ReadingOptions): Read<QuantityReading> => {
  const point = readPlainQuantity(text, unit, pair, options);
  if (!point.ok || !point.value.symmetric) return point;
  const problem: Problem = { code: 'bad-curve', given: pair, rule: 'a point has one value, not ±' };
  return unread(problem);
};
