import type { Problem, Read, Statistic } from '../issue';
import { read, unread } from '../issue';
import { toSi, UNITS, type UnitId } from '../units';
import { echoes, splitEcho, unbracketed } from './brackets';
import { LONGEST_TEXT, plainText, shown } from './characters';
import { isReferredLevel, readReferredLevel } from './referred-level';
import { takeMarks } from './marks';
import { isName, isSignal, scaleValue, splitValue, type Parts } from './value';

export interface ReadingOptions {
  /** Decides texts such as "1,250" that are a number either way. */
  decimal?: '.' | ',';
}

export interface QuantityReading {
  /** In SI (temperatures in °C, deviations as fractions of 1). */
  si: number;
  statistic?: Statistic;
  /** Written with ±. */
  symmetric?: true;
  /** "≤ 5" or "5 max": the number is a bound, not the value itself. */
  bound?: 'at most' | 'at least';
  /** The unit as written, in plain characters, when one was written. */
  unitText?: string;
  /** Tolerance written behind the value, as a fraction of 1. */
  tolerance?: number;
  /** What the text leaves open and how it was taken, for display. */
  assumed?: string[];
}

const isPlainNumber = (text: string): boolean => {
  if (text.length > 24) return false;
  for (const char of text) if ((char < '0' || char > '9') && char !== '.' && char !== '-') return false;
  return true;
};

/**
 * A text as an engineer types it, for a field documented in `unit`. The field decides what g, mg, C or lb mean.
 * A bare number is in the documented unit. Thread and connector names are no numbers.
 */
export const readQuantity = (text: string, unit: UnitId, options: ReadingOptions = {}): Read<QuantityReading> => {
  if (options.decimal !== ',' && text !== '' && isPlainNumber(text)) {
    const value = Number(text);
    if (Number.isFinite(value)) return read({ si: toSi(value, unit) });
  }
  const given = shown(text);
  if (text.length > LONGEST_TEXT) return unread({ code: 'not-a-number', given, unit: UNITS[unit].label });
  return readPlainQuantity(plainText(text), unit, given, options);
};

interface Spread {
  /** Without the ± part. */
  whole: string;
  half?: Parts;
}
/** "100 ± 10 mV/g" falls into a value and half a width. */
const splitSpread = (bare: string, options: ReadingOptions): Spread | undefined => {
  const at = bare.indexOf('±', 1);
  if (at < 0) return { whole: bare };
  const half = splitValue(bare.slice(at + 1).trim(), options.decimal);
  return half && !half.symmetric && !isName(half.unitText) ? { whole: bare.slice(0, at).trim(), half } : undefined;
};

/** The tolerance a half width means, as a fraction; a temperature has none and keeps a note instead. */
const toleranceOf = (
  half: Parts,
  si: number,
  unitText: string,
  unit: UnitId,
  given: string,
): Read<number | undefined> => {
  const scaled = scaleValue(half.value, half.unitText || unitText, unit, given);
  if (!scaled.ok) return unread(scaled.problem);
  return read(UNITS[unit].quantity === 'temperature' || si === 0 ? undefined : Math.abs(scaled.si / si));
};

const undecided = (parts: Parts, half: Parts | undefined, unitText: string, given: string): Problem | undefined => {
  const open = [parts, half].find((part) => part?.orThousands !== undefined);
  if (open) {
    const readings = [open.value, open.orThousands].map((value) => `${value} ${unitText}`.trimEnd());
    return { code: 'ambiguous', given, readings: [readings[0] ?? '', readings[1] ?? ''] };
  }
  return parts.unitText === '^2'
    ? { code: 'ambiguous', given, readings: [`${parts.value}, with a footnote mark`, `${parts.value ** 2}`] }
    : undefined;
};

const readTwice = (
  value: string,
  echo: string,
  unit: UnitId,
  given: string,
  options: ReadingOptions,
): Read<QuantityReading> => {
  const first = readPlainQuantity(value, unit, given, options);
  const second = readPlainQuantity(echo, unit, given, options);
  if (!first.ok || !second.ok) return first.ok ? second : first;
  return echoes([first.value.si], [second.value.si])
    ? first
    : unread({ code: 'ambiguous', given, readings: [value, echo] });
};

/** The same for a text that is already in plain characters. */
export const readPlainQuantity = (
  plain: string,
  unit: UnitId,
  given: string,
  options: ReadingOptions = {},
): Read<QuantityReading> => {
  const { label, quantity } = UNITS[unit];
  const noNumber = unread<QuantityReading>({ code: 'not-a-number', given, unit: label });
  if (quantity === 'frequency' && plain.toUpperCase() === 'DC') return read({ si: 0, assumed: ['DC read as 0 Hz'] });
  const twice = splitEcho(plain);
  if (twice) return readTwice(twice.value, twice.echo, unit, given, options);
  const { bare, marks } = takeMarks(unbracketed(plain));
  if (isReferredLevel(bare)) return readReferredLevel(bare, unit, given, options);
  const spread = splitSpread(bare, options);
  const parts = spread && splitValue(spread.whole, options.decimal);
  if (!parts || isName(parts.unitText)) return noNumber;
  const unitText = parts.unitText || (spread.half?.unitText ?? '');
  const problem = undecided(parts, spread.half, unitText || label, given);
  if (problem) return unread(problem);
  const scaled = scaleValue(parts.value, unitText, unit, given);
  if (!scaled.ok) return unread(scaled.problem);
  if (!Number.isFinite(scaled.si)) return noNumber;
  const statistic = marks.statistic ?? scaled.statistic;
  if (marks.contradicts || (statistic && !isSignal(unit))) return unread({ code: 'wrong-unit', given, unit: label });
  const tolerance = spread.half && toleranceOf(spread.half, scaled.si, unitText, unit, given);
  if (tolerance && !tolerance.ok) return tolerance;
  const fraction = tolerance?.value ?? marks.tolerance;
  const leftOut = spread.half && fraction === undefined ? [`± ${spread.half.value} left out`] : [];
  const assumed = [...marks.assumed, ...(scaled.assumed ? [scaled.assumed] : []), ...leftOut];
  return read({
    si: scaled.si,
    ...(statistic && { statistic }),
    ...(parts.symmetric && { symmetric: true }),
    ...(marks.bound && { bound: marks.bound }),
    ...(unitText !== '' && { unitText }),
    ...(fraction !== undefined && { tolerance: fraction }),
    ...(assumed.length > 0 && { assumed }),
  });
};
