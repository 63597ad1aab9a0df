import type { Purpose } from './fields';

/** A bound for PASS, one for WARN where there is such a zone, and why it has this value. */
export interface Bound {
  readonly pass: number;
  readonly warn?: number;
  /** "default, no standard", or what the plan's own limits table says. */
  readonly origin: string;
  readonly reason: string;
}

/** A limit for one purpose, one structure part or both; an absent bound is that of the wider limit. */
export interface ScopedLimit {
  readonly limit: 'signalToNoise' | 'headroom' | 'massRatio' | 'thermalTolerance' | 'spanTolerance';
  readonly purpose?: Purpose;
  readonly group?: string;
  readonly pass?: number;
  readonly warn?: number;
  /** Ends with purpose and part, so that a finding shows which limit it met. */
  readonly origin: string;
}

/** The limits of one plan, in dB, ratios and fractions of 1. */
export interface Limits {
  readonly signalToNoise: Bound;
  readonly headroom: Bound;
  readonly massRatio: Readonly<Record<Purpose, Bound>>;
  readonly thermalTolerance: Bound;
  /** `warn` is the wide tolerance. */
  readonly spanTolerance: Bound;
  /** Taken for rows that name no purpose; the finding says so. Absent: such a row is judged only where all purposes agree. */
  readonly purpose?: Purpose;
  /** For a row see `limitsFor`. */
  readonly scoped?: readonly ScopedLimit[];
  readonly calibrationTemperature: number;
  readonly referenceFrequency: number;
  /** A joint may carry its holding force divided by this. */
  readonly holdingFactor: number;
}

export const DEFAULT_ORIGIN = 'default, no standard';
export const ROW_ORIGIN = 'this row';

const byDefault = (pass: number, warn: number | undefined, reason: string): Bound => ({
  pass,
  warn,
  origin: DEFAULT_ORIGIN,
  reason,
});
const levelRule = 'a ratio of 0.10 lowers the level by 9.1 % and the natural frequency by 4.7 %';

export const DEFAULT_LIMITS: Limits = {
  signalToNoise: byDefault(20, 10, 'noise raises an r.m.s. reading by 0.50 % at 20 dB and by 4.9 % at 10 dB'),
  headroom: byDefault(3.5, 0, 'a factor 1.5 over 3σ is 4.5σ, near the largest peak in a minute of random vibration'),
  massRatio: {
    survey: byDefault(0.1, 0.2, levelRule),
    shock: byDefault(0.1, 0.2, levelRule),
    modal: byDefault(0.02, 0.1, 'a ratio of 0.02 lowers the natural frequency by 1.0 %'),
  },
  thermalTolerance: byDefault(0.05, undefined, '±5 % is a usual request of vibration tests; from memory'),
  spanTolerance: byDefault(0.05, 0.1, '±5 % is the usual flatness class of data sheets; from memory'),
  purpose: 'survey',
  calibrationTemperature: 23,
  referenceFrequency: 160,
  holdingFactor: 3,
};
