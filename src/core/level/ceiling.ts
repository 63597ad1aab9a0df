/** What can limit the largest peak, in the order in which equal terms are named. */
export const CEILING_CAUSES = ['full scale', 'input range', 'bias swing', 'amplifier output'] as const;
export type CeilingCause = (typeof CEILING_CAUSES)[number];

/** Peak accelerations in m/s² at which each term clips; a term that the chain does not have is left out. */
export type CeilingTerms = Readonly<Partial<Record<CeilingCause, number>>>;

export interface Ceiling {
  /** m/s² peak. */
  readonly value: number;
  readonly limiting: CeilingCause;
  /** Terms equal to the limiting one. */
  readonly alsoLimiting: readonly CeilingCause[];
}

/** Terms this close are one limit: far above rounding, far below any tolerance of a part. */
const SAME_LIMIT = 1e-9;
const NONE: readonly CeilingCause[] = [];

/** The smallest term and its name; undefined when no term is given. */
export const upperLimit = (terms: CeilingTerms): Ceiling | undefined => {
  let value = Infinity;
  for (const cause of CEILING_CAUSES) value = Math.min(value, terms[cause] ?? Infinity);
  const within = value + Math.abs(value) * SAME_LIMIT;
  let limiting: CeilingCause | undefined;
  let alsoLimiting = NONE;
  for (const cause of CEILING_CAUSES) {
    if (!((terms[cause] ?? Infinity) <= within) || within === Infinity) continue;
    if (limiting === undefined) limiting = cause;
    else alsoLimiting = [...alsoLimiting, cause];
  }
  return limiting === undefined ? undefined : { value, limiting, alsoLimiting };
};

/**
 * Peak volt that a constant-current (IEPE) sensor can swing about its bias, the smaller of the two ways; never below 0.
 * Bias limits are those over the temperature range. Source: the output stays between floor and supply − drop.
 */
export const biasSwing = (supply: number, biasMin: number, biasMax: number, sourceDrop: number, biasFloor: number) =>
  Math.max(0, Math.min(supply - biasMax - sourceDrop, biasMin - biasFloor));

/** Supply in V that leaves an upward swing (V peak) above the highest bias. */
export const supplyNeeded = (swing: number, biasMax: number, sourceDrop: number): number =>
  biasMax + sourceDrop + swing;

/** Largest sensitivity in V/(m/s²) at which a peak times a margin (1.5 for half as much again) fits a range in V. */
export const allowedSensitivity = (range: number, highestPeak: number, margin: number): number =>
  range / (margin * highestPeak);
