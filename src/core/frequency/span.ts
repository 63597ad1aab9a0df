import { firstExit } from './first-exit';
import { gain, peakFrequency, resonanceGain, type Response } from './response';

export type HighCause = 'response' | 'analyser' | 'cable drive' | 'data sheet';
export type LowCause = 'response' | 'nothing';

export interface SpanQuery extends Response {
  /** Frequency in Hz of the certified sensitivity. */
  readonly reference: number;
  /** Largest fall of |H/H_ref| below 1, as a fraction between 0 and 1. */
  readonly tolerance: number;
  /** Largest rise above 1 as a fraction, where it differs from the fall. */
  readonly rise?: number;
  /** Hard upper limits in Hz, whatever the response. */
  readonly caps?: Readonly<Partial<Record<Exclude<HighCause, 'response'>, number>>>;
}

export interface Span {
  /** Hz; 0 when nothing limits the low end. */
  readonly low: number;
  readonly lowLimitedBy: LowCause;
  /** Hz. */
  readonly high: number;
  readonly highLimitedBy: HighCause;
}

/**
 * The contiguous interval round the reference in which the response stays in tolerance, cut by the caps; null when empty.
 * Without high-pass poles the low end is 0, unless the reference itself lies too far up the resonance.
 * Source: definition of a flatness band, |H/H_ref − 1| ≤ tolerance; blocks independent of each other.
 */
export const usableSpan = (query: SpanQuery): Span | null => {
  const atReference = gain(query, query.reference);
  const lower = atReference * (1 - query.tolerance);
  const upper = atReference * (1 + (query.rise ?? query.tolerance));
  const low = lowEnd(query, lower, upper);
  const { high, highLimitedBy } = highEnd(query, lower, upper);
  if (low > high) return null;
  return { low, lowLimitedBy: low > 0 ? 'response' : 'nothing', high, highLimitedBy };
};

/** Below this fraction of the resonance its gain is 1 to the last digit, so without poles nothing changes further down. */
const FLAT_FRACTION = 1e-9;

const lowEnd = (query: SpanQuery, lower: number, upper: number): number => {
  let cornersSquared = 0;
  for (const corner of query.lowPoles) cornersSquared += corner * corner;
  if (cornersSquared === 0) {
    const flat = Math.min(query.reference, query.resonance * FLAT_FRACTION);
    return firstExit(query, query.reference, flat, lower, upper) ?? 0;
  }
  // Π(1+(fc/f)²) ≥ 1+Σ(fc/f)², so at this frequency the gain is certainly below the lower bound.
  const most = resonanceGain(query.resonance, query.qualityFactor, Math.min(query.reference, peakFrequency(query)));
  const below = Math.sqrt(cornersSquared / ((most / lower) ** 2 - 1));
  return firstExit(query, query.reference, below, lower, upper) ?? below;
};

const highEnd = (query: SpanQuery, lower: number, upper: number): Pick<Span, 'high' | 'highLimitedBy'> => {
  const { caps = {}, reference, resonance } = query;
  let cap = Infinity;
  let capCause: HighCause = 'response';
  for (const cause of CAP_ORDER) {
    const value = caps[cause] ?? Infinity;
    if (value < cap) {
      cap = value;
      capCause = cause;
    }
  }
  // |H| ≤ 1/(x²−1) above the resonance, so here it is certainly below the lower bound.
  const above = resonance * Math.sqrt(1 + 1 / lower);
  const stop = Math.min(cap, above);
  const peak = peakFrequency(query);
  let exit: number | null = null;
  if (stop > reference) {
    if (reference < peak && peak < stop)
      exit = firstExit(query, reference, peak, lower, upper) ?? firstExit(query, peak, stop, lower, upper);
    else exit = firstExit(query, reference, stop, lower, upper);
  }
  if (exit !== null && exit < cap) return { high: exit, highLimitedBy: 'response' };
  return above < cap ? { high: above, highLimitedBy: 'response' } : { high: cap, highLimitedBy: capCause };
};

const CAP_ORDER = ['analyser', 'cable drive', 'data sheet'] as const;
