import { failure, outcome, type Outcome } from '../../core/issue';
import type { ArgSpecs } from '../define';

/** The analysed band, shared by every noise function. */
export const ANALYSED_BAND = {
  low: {
    unit: 'Hz',
    symbol: 'f₁',
    text: 'Lower band edge, or both edges as a range text.',
    atLeast: 0,
    rangeWith: 'high',
  },
  high: { unit: 'Hz', symbol: 'f₂', text: 'Upper band edge.', above: 0 },
  lineSpacing: {
    unit: 'Hz',
    symbol: 'Δf',
    text: 'Line spacing when the level is read in one Hann line at the lower edge; blank: whole band.',
    above: 0,
    optional: true,
  },
} as const satisfies ArgSpecs;

/** Refuses a band whose edges are equal or swapped. */
export const inBand = <T>(low: number, high: number, compute: () => T): Outcome<T> =>
  high > low
    ? outcome(compute())
    : failure({ code: 'out-of-range', arg: 'high', given: high, unit: 'Hz', rule: `> low, ${low}` });
