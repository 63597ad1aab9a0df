import type { Response } from './response';

export type HighCause = 'response' | 'analyser' | 'cable drive' | 'data sheet';
export type LowCause = 'response' | 'nothing';

export interface SpanQuery extends Response {
  /** Frequency in Hz of the certified sensitivity. */
  readonly reference: number;
  /** Largest |H/H_ref − 1|, as a fraction between 0 and 1. */
  readonly tolerance: number;
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

/** The contiguous interval round the reference in which the response stays in tolerance, cut by the caps; null when empty. */
export const usableSpan = (query: SpanQuery): Span | null => {
  void query;
  return null;
};
