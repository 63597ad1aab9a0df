import { fromSi, UNITS, type UnitId } from '../core/units';

const MINUS = '−';
const typeset = (text: string): string => text.replace('-', MINUS);
const plain = (value: number, digits: number): string => String(Number(value.toPrecision(digits)));

/** A number to so many digits, without its unit. */
export const inWords = (si: number, unit: UnitId, digits = 3): string => typeset(plain(fromSi(si, unit), digits));

/** A number with its unit. */
export const withUnit = (si: number, unit: UnitId, digits = 3): string =>
  `${inWords(si, unit, digits)} ${UNITS[unit].label}`.trimEnd();

/** With a plus sign where it is one, as deviations are written. */
export const signed = (si: number, unit: UnitId, digits = 3): string => (si > 0 ? '+' : '') + inWords(si, unit, digits);

const FIXED_DIGITS = 1;
const decibel = (dB: number, decimals: number): string => typeset(String(Number(dB.toFixed(decimals))));

const RATIO_DECIMALS = 2;
/** Ratio limits keep two decimals where that is exact: 0.10. */
const ratioLimit = (limit: number): string =>
  Number(limit.toFixed(RATIO_DECIMALS)) === limit ? limit.toFixed(RATIO_DECIMALS) : plain(limit, 3);

const MOST_DIGITS = 9;
/** Rounds both so far that a number beside its limit never reads like the limit itself. */
const apart = (write: (value: number, digits: number) => string, number: number, limit: number, digits: number) => {
  let used = digits;
  while (number !== limit && used < MOST_DIGITS && write(number, used) === write(limit, used)) used += 1;
  return [write(number, used), write(limit, used)] as const;
};

/** "X dB, limit Y dB" and its like: both numbers, told apart. */
export const decibelsAgainst = (number: number, limit: number) =>
  apart(decibel, number, limit, FIXED_DIGITS).map((text) => `${text} dB`) as [string, string];

export const ratioAgainst = (number: number, limit: number): readonly [string, string] => {
  const [shown] = apart((value, digits) => plain(value, digits), number, limit, 3);
  return [typeset(shown), ratioLimit(limit)];
};

export const quantityAgainst = (number: number, limit: number, unit: UnitId): readonly [string, string] => {
  const [shown, bound] = apart((value, digits) => inWords(value, unit, digits), number, limit, 3);
  return [`${shown} ${UNITS[unit].label}`, `${bound} ${UNITS[unit].label}`];
};

/** Below this many g an acceleration is written in millionths, for "mg" would read as a mass. */
const SMALL_G = 0.01;
const MILLIONTHS = 1e6;
export const acceleration = (si: number): string => {
  const g = fromSi(si, 'g');
  return Math.abs(g) < SMALL_G && g !== 0 ? `${typeset(plain(g * MILLIONTHS, 3))} µg` : `${typeset(plain(g, 3))} g`;
};
