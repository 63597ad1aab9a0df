import type { Read, Statistic } from '../issue';
import { read, unread } from '../issue';
import { toSi, UNITS, type UnitId } from '../units';

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
  /** The unit as written, when one was written. */
  unitText?: string;
  /** Tolerance written behind the value, as a fraction of 1. */
  tolerance?: number;
  /** What the text leaves open and how it was taken, for display. */
  assumed?: string[];
}

export const readQuantity = (text: string, unit: UnitId, _options?: ReadingOptions): Read<QuantityReading> => {
  const { label } = UNITS[unit];
  const trimmed = text.trim();
  const bare = label !== '' && trimmed.endsWith(label) ? trimmed.slice(0, -label.length).trim() : trimmed;
  const value = bare === '' ? Number.NaN : Number(bare);
  return Number.isFinite(value)
    ? read({ si: toSi(value, unit) })
    : unread({ code: 'not-a-number', given: text, unit: label });
};
