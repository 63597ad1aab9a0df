import type { Problem, Statistic } from '../issue';
import { toSi, UNITS, type QuantityName, type UnitId } from '../units';
import { isDigit, isSpace } from './characters';
import { numberAt } from './number';
import { unitFactor } from './unit-factor';

/** A number and the unit text behind it, nothing decided yet. */
export interface Parts {
  symmetric: boolean;
  value: number;
  orThousands?: number;
  unitText: string;
}

/** Fields in which a bare k or M behind the number is a multiplier of the documented unit. */
const MULTIPLIED = new Set<UnitId>(['Hz', 'g', 'V', 'N', 'N/m', '1']);
const MULTIPLIERS: Readonly<Record<string, number>> = { k: 1e3, K: 1e3, M: 1e6 };

/** A bare k or M that multiplies the documented unit of this field. */
export const isMultiplier = (unitText: string, unit: UnitId): boolean =>
  MULTIPLIERS[unitText] !== undefined && MULTIPLIED.has(unit);

export const splitValue = (text: string, decimal?: '.' | ','): Parts | undefined => {
  let at = 0;
  const symmetric = text[0] === '±';
  if (symmetric) at++;
  while (isSpace(text[at])) at++;
  const negative = text[at] === '-';
  if (negative && symmetric) return undefined;
  if (negative || text[at] === '+') at++;
  while (isSpace(text[at])) at++;
  const found = numberAt(text, at, decimal);
  if (!found) return undefined;
  const sign = negative ? -1 : 1;
  return {
    symmetric,
    value: sign * found.value,
    orThousands: found.orThousands === undefined ? undefined : sign * found.orThousands,
    unitText: text.slice(found.end).trim(),
  };
};

export type Scaled =
  { ok: true; si: number; statistic?: Statistic; assumed?: string } | { ok: false; problem: Problem };

const DEGREE_WORDS = ['°', 'degrees', 'degree', 'deg.', 'deg'];
const isKelvin = (unitText: string): boolean => {
  const low = unitText.toLowerCase();
  const degree = DEGREE_WORDS.find((word) => low.startsWith(word)) ?? '';
  return low.slice(degree.length).trimStart().startsWith('k');
};

const celsius = (value: number, unitText: string): number | undefined => {
  const found = unitFactor(unitText, 'temperature');
  if (found.kind !== 'factor' || found.statistic) return undefined;
  if (found.toSi === 1) return isKelvin(unitText) ? value - 273.15 : value;
  // Exactly the step of one °F; a multiple or part of a kelvin is no scale.
  return Math.abs(found.toSi - 5 / 9) < 1e-12 ? ((value - 32) * 5) / 9 : undefined;
};

/** Statistics belong to signals; "7 g pk" in a mass column is not a mass. */
const SIGNALS = new Set<QuantityName>([
  'acceleration',
  'acceleration noise density',
  'acceleration spectral density',
  'voltage',
  'voltage noise density',
  'current',
  'force',
  'length',
  'velocity',
]);
export const isSignal = (unit: UnitId): boolean => SIGNALS.has(UNITS[unit].quantity);

/** The value in SI, by the unit written behind it or else the documented one. */
export const scaleValue = (value: number, unitText: string, unit: UnitId, given: string): Scaled => {
  const { label, quantity } = UNITS[unit];
  if (unitText === '' || unitText === label) return { ok: true, si: toSi(value, unit) };
  const multiplier = MULTIPLIERS[unitText];
  if (multiplier !== undefined && MULTIPLIED.has(unit)) return { ok: true, si: toSi(value * multiplier, unit) };
  if (quantity === 'temperature') {
    if (unitText === '°' || unitText === 'deg') {
      return { ok: true, si: value, assumed: '° read as °C' };
    }
    const si = celsius(value, unitText);
    if (si !== undefined) return { ok: true, si };
  }
  const found = unitFactor(unitText, quantity);
  switch (found.kind) {
    case 'factor':
      return quantity === 'temperature'
        ? { ok: false, problem: { code: 'wrong-unit', given, unit: label } }
        : { ok: true, si: value * found.toSi, statistic: found.statistic };
    case 'ambiguous':
      return {
        ok: false,
        problem: {
          code: 'ambiguous',
          given,
          readings: [`${value} ${found.readings[0]}`, `${value} ${found.readings[1]}`],
        },
      };
    case 'wrong':
      return { ok: false, problem: { code: 'wrong-unit', given, unit: label } };
    case 'malformed':
      return { ok: false, problem: { code: 'not-a-number', given, unit: label } };
  }
};

/** The documented unit, perhaps in another spelling, or a bare multiplier of it. */
export const isDocumented = (unitText: string, unit: UnitId): boolean => {
  if (isMultiplier(unitText, unit)) return true;
  const one = scaleValue(1, unitText, unit, unitText);
  return one.ok && Math.abs(one.si - toSi(1, unit)) <= 1e-12 * toSi(1, unit);
};

/** Digits where a unit should begin: "10-32", "1/4-28", "1:30" are names, ratios or times. */
export const isName = (unitText: string): boolean => '-/:.,x'.includes(unitText[0] ?? ' ') && isDigit(unitText[1]);
