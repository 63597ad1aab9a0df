import type { Read, Statistic } from '../issue';
import { read, unread } from '../issue';
import { UNITS, type UnitId } from '../units';
import { readQuantity, type ReadingOptions } from './quantity';

export interface RangeReading {
  /** Both in SI; low ≤ high. */
  low: number;
  high: number;
  statistic?: Statistic;
  /** Tolerance written behind the range, as a fraction of 1. */
  tolerance?: number;
  assumed?: string[];
}

export const readRange = (text: string, unit: UnitId, options?: ReadingOptions): Read<RangeReading> => {
  const [first = '', second = ''] = text.split('..');
  const low = readQuantity(first, unit, options);
  const high = readQuantity(second, unit, options);
  return low.ok && high.ok
    ? read({ low: low.value.si, high: high.value.si })
    : unread({ code: 'not-a-number', given: text, unit: UNITS[unit].label });
};
