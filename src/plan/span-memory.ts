import { usableSpan, type HighCause, type SpanQuery } from '../core/frequency/span';

export type Caps = Readonly<Partial<Record<Exclude<HighCause, 'response'>, number>>>;

export interface ChannelSpan {
  readonly low: number;
  readonly high: number;
  readonly highLimitedBy: HighCause;
}

/** The span inside its hard upper limits; null when nothing is left. */
export const cutSpan = (span: ChannelSpan | null, caps: Caps): ChannelSpan | null => {
  if (!span) return null;
  let { high, highLimitedBy } = span;
  for (const cause of ['analyser', 'cable drive', 'data sheet'] as const) {
    const cap = caps[cause];
    if (cap === undefined || !(cap <= high)) continue;
    if (cap === high && highLimitedBy !== 'response') continue;
    high = cap;
    highLimitedBy = cause;
  }
  if (span.low > high) return null;
  return high === span.high && highLimitedBy === span.highLimitedBy ? span : { low: span.low, high, highLimitedBy };
};

/** Solved responses of one check run: many channels share a sensor, a mount and an input. */
export class SpanMemory {
  private readonly byResonance = new Map<number, { query: SpanQuery; span: ChannelSpan | null }[]>();

  /** Without caps, which differ from row to row. */
  span(query: SpanQuery): ChannelSpan | null {
    let solved = this.byResonance.get(query.resonance);
    if (!solved) this.byResonance.set(query.resonance, (solved = []));
    for (const entry of solved) if (isSame(entry.query, query)) return entry.span;
    const span = usableSpan(query);
    if (solved.length < MOST_PER_RESONANCE) solved.push({ query, span });
    return span;
  }
}

/** Beyond this many variants of one resonance a look-up costs more than solving. */
const MOST_PER_RESONANCE = 32;

const isSame = (a: SpanQuery, b: SpanQuery): boolean =>
  a.tolerance === b.tolerance &&
  a.reference === b.reference &&
  a.qualityFactor === b.qualityFactor &&
  a.lowPoles.length === b.lowPoles.length &&
  a.lowPoles.every((corner, i) => corner === b.lowPoles[i]);
