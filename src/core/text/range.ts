import type { Problem, Read, Statistic } from '../issue';
import { read, unread } from '../issue';
import { UNITS, type QuantityName, type UnitId } from '../units';
import { LONGEST_TEXT, plainText, shown } from './characters';
import type { Marks } from './mark-words';
import { takeMarks } from './marks';
import { isThreadName } from './names';
import { readPlainQuantity, type QuantityReading, type ReadingOptions } from './quantity';
import { separatorsOf, type Separator } from './range-separators';
import { isDocumented, splitValue } from './value';

export interface RangeReading {
  /** Both in SI; low ≤ high. */
  low: number;
  high: number;
  statistic?: Statistic;
  /** Tolerance written behind the range, as a fraction of 1. */
  tolerance?: number;
  /** What the text leaves open and how it was taken, for display. */
  assumed?: string[];
}

const SIGNED = new Set<QuantityName>([
  'temperature',
  'temperature difference',
  'temperature coefficient',
  'acceleration',
  'fraction',
  'ratio',
  'level difference',
  'zero drift',
  'angle',
]);

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

interface Ends {
  low: QuantityReading;
  high: QuantityReading;
  note?: string;
}
const readEnds = (text: string, at: Separator, unit: UnitId, options: ReadingOptions): Read<Ends> => {
  const before = text.slice(0, at.from).trim();
  const after = text.slice(at.to).trim();
  const [first, second, note] = withSharedUnit(before, after, unit, options);
  const low = readPlainQuantity(first, unit, text, options);
  if (!low.ok) return low;
  const high = readPlainQuantity(second, unit, text, options);
  if (!high.ok) return high;
  return read({ low: low.value, high: high.value, note });
};

const joined = ({ low, high, note }: Ends, marks: Marks): RangeReading => {
  const swapped = low.si > high.si;
  const assumed = [
    ...marks.assumed,
    ...(low.assumed ?? []),
    ...(high.assumed ?? []),
    ...(note ? [note] : []),
    ...(swapped ? ['ends put in order'] : []),
  ];
  const statistic = marks.statistic ?? high.statistic ?? low.statistic;
  return {
    low: Math.min(low.si, high.si),
    high: Math.max(low.si, high.si),
    ...(statistic && { statistic }),
    ...(marks.tolerance !== undefined && { tolerance: marks.tolerance }),
    ...(assumed.length > 0 && { assumed }),
  };
};

/** "10 ±3 °C" and "±10" are ranges about a middle. */
const readAboutMiddle = (
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

const readBetween = (bare: string, unit: UnitId, given: string, options: ReadingOptions): Read<Ends> => {
  let found: Ends | undefined;
  let problem: Problem = { code: 'not-a-number', given, unit: UNITS[unit].label };
  for (const separator of separatorsOf(bare)) {
    const ends = readEnds(bare, separator, unit, options);
    if (!ends.ok) {
      if (problem.code !== 'ambiguous') problem = { ...ends.problem, given };
      continue;
    }
    const first = bare.slice(0, separator.from).trim();
    const second = bare.slice(separator.to).trim();
    if (separator.looksLikeSign && SIGNED.has(UNITS[unit].quantity)) {
      return unread({ code: 'ambiguous', given, readings: [`${first} to ${second}`, `${first} and -${second}`] });
    }
    if (found) return unread({ code: 'not-a-number', given, unit: UNITS[unit].label });
    found = ends.value;
  }
  return found ? read(found) : unread(problem);
};

/** A range as an engineer types it: "-54..+121 °C", "−40–85", "2 Hz - 5 kHz (±5 %)", "±10". */
export const readRange = (text: string, unit: UnitId, options: ReadingOptions = {}): Read<RangeReading> => {
  const given = shown(text);
  const noRange = unread<RangeReading>({ code: 'not-a-number', given, unit: UNITS[unit].label });
  if (text.length > LONGEST_TEXT) return noRange;
  const { bare, marks } = takeMarks(plainText(text));
  if (marks.bound || marks.contradicts) return noRange;
  if (isThreadName(bare)) {
    return unread({ code: 'ambiguous', given, readings: [bare.replace('-', ' to '), `thread or connector ${bare}`] });
  }
  const ends = readAboutMiddle(bare, unit, given, options) ?? readBetween(bare, unit, given, options);
  return ends.ok ? read(joined(ends.value, marks)) : ends;
};
