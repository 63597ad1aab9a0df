import type { Problem, Read, Statistic } from '../issue';
import { read, unread } from '../issue';
import { UNITS, type QuantityName, type UnitId } from '../units';
import { echoes, splitEcho, unbracketed } from './brackets';
import { LONGEST_TEXT, plainText, shown } from './characters';
import type { Marks } from './mark-words';
import { takeMarks } from './marks';
import { isThreadName } from './names';
import type { ReadingOptions } from './quantity';
import { readAboutMiddle, readEnds, type Ends } from './range-ends';
import { separatorsOf, withoutLeadingWord } from './range-separators';

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

const readPlainRange = (plain: string, unit: UnitId, given: string, options: ReadingOptions): Read<RangeReading> => {
  const twice = splitEcho(plain);
  if (twice && separatorsOf(twice.echo).length > 0) {
    const first = readPlainRange(twice.value, unit, given, options);
    const second = readPlainRange(twice.echo, unit, given, options);
    if (!first.ok || !second.ok) return first.ok ? second : first;
    const [one, other] = [first.value, second.value];
    return echoes([one.low, one.high], [other.low, other.high])
      ? first
      : unread({ code: 'ambiguous', given, readings: [twice.value, twice.echo] });
  }
  const { bare, marks } = takeMarks(withoutLeadingWord(unbracketed(plain)));
  if (marks.bound || marks.contradicts) return unread({ code: 'not-a-number', given, unit: UNITS[unit].label });
  if (isThreadName(bare)) {
    return unread({ code: 'ambiguous', given, readings: [bare.replace('-', ' to '), `thread or connector ${bare}`] });
  }
  const ends = readAboutMiddle(bare, unit, given, options) ?? readBetween(bare, unit, given, options);
  return ends.ok ? read(joined(ends.value, marks)) : ends;
};

/** A range as an engineer types it: "-54..+121 °C", "−40–85", "2 Hz - 5 kHz (±5 %)", "±10". */
export const readRange = (text: string, unit: UnitId, options: ReadingOptions = {}): Read<RangeReading> => {
  const given = shown(text);
  return text.length > LONGEST_TEXT
    ? unread({ code: 'not-a-number', given, unit: UNITS[unit].label })
    : readPlainRange(plainText(text), unit, given, options);
};
