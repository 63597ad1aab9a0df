import { halfBand, worstDeviation, type Band } from './thermal/band';

export const VERDICTS = ['PASS', 'WARN', 'INCOMPLETE', 'FAIL'] as const;
/** In rising severity: a known failure stays one, whatever else is missing. */
export type Verdict = (typeof VERDICTS)[number];

/** How many have each verdict. */
export const verdictCounts = (judged: readonly { readonly verdict: Verdict }[]): Record<Verdict, number> => {
  const counts: Record<Verdict, number> = { PASS: 0, WARN: 0, INCOMPLETE: 0, FAIL: 0 };
  for (const { verdict } of judged) counts[verdict]++;
  return counts;
};

export const worstVerdict = (verdicts: readonly Verdict[]): Verdict =>
  verdicts.reduce<Verdict>((worst, next) => (VERDICTS.indexOf(next) > VERDICTS.indexOf(worst) ? next : worst), 'PASS');

/** Relative slack for rounding, so that a number equal to its limit on paper counts as equal. */
const ROUNDING = 1e-9;
const reaches = (number: number, bound: number): boolean => number >= bound - ROUNDING * Math.abs(bound);
const known = (number: number | undefined): number is number => number !== undefined && !Number.isNaN(number);

/** For numbers that must be large enough. No `warn`: no WARN zone. A missing number or pass limit is INCOMPLETE. */
export const verdictAtLeast = (number: number | undefined, pass: number | undefined, warn?: number): Verdict => {
  if (!known(number) || !known(pass)) return 'INCOMPLETE';
  if (reaches(number, pass)) return 'PASS';
  return known(warn) && reaches(number, warn) ? 'WARN' : 'FAIL';
};

/** For numbers that must be small enough. */
export const verdictAtMost = (number: number | undefined, pass: number | undefined, warn?: number): Verdict =>
  verdictAtLeast(negative(number), negative(pass), negative(warn));

const negative = (number: number | undefined): number | undefined => (number === undefined ? undefined : -number);

/** Both ends may be unknown. */
export interface Limits {
  readonly min?: number;
  readonly max?: number;
}

/**
 * Needed temperatures (°C) against operating limits, `required` first: FAIL beyond any known limit, INCOMPLETE while a
 * temperature or an end of the required limits is unknown.
 */
export const temperatureLimitsVerdict = (needed: Limits, required: Limits, others: readonly Limits[] = []): Verdict => {
  const temperatures = [needed.min, needed.max].filter(known);
  const isBeyond = ({ min, max }: Limits): boolean =>
    temperatures.some((temperature) => (known(min) && temperature < min) || (known(max) && temperature > max));
  if ([required, ...others].some(isBeyond)) return 'FAIL';
  return temperatures.length === 2 && known(required.min) && known(required.max) ? 'PASS' : 'INCOMPLETE';
};

/** Deviation band against a tolerance, all as fractions: PASS uncorrected, WARN if only scaling to its middle saves it. */
export const thermalBandVerdict = (band: Band | undefined, tolerance: number | undefined): Verdict => {
  if (!band) return 'INCOMPLETE';
  const uncorrected = verdictAtMost(worstDeviation(band), tolerance);
  if (uncorrected !== 'FAIL') return uncorrected;
  return verdictAtMost(halfBand(band), tolerance) === 'PASS' ? 'WARN' : 'FAIL';
};

export const thermalVerdict = (given: {
  readonly band: Band | undefined;
  readonly tolerance: number | undefined;
  readonly needed: Limits;
  readonly sensor: Limits;
  /** Mount, cable, adhesive: unknown ends of these do not matter. */
  readonly others?: readonly Limits[];
}): Verdict =>
  worstVerdict([
    temperatureLimitsVerdict(given.needed, given.sensor, given.others),
    thermalBandVerdict(given.band, given.tolerance),
  ]);

/** Relative slack on band edges: a band that ends at the span's edge is inside. */
export const EDGE_SLACK = 0.001;

/** A frequency interval in Hz whose ends may be unknown, or an interval known to be empty. */
export type Span = { readonly low?: number; readonly high?: number } | 'empty';

/** Needed band against the span at its tolerance (PASS) and the wide span (WARN); an empty span is a FAIL. */
export const spanVerdict = (
  band: { readonly low?: number; readonly high?: number },
  span: Span | undefined,
  wide: Span | undefined,
): Verdict => {
  if (span === 'empty' || wide === 'empty') return 'FAIL';
  return worstVerdict([
    edgeVerdict(band.low, span?.low, wide?.low, (edge, limit) => edge >= limit * (1 - EDGE_SLACK)),
    edgeVerdict(band.high, span?.high, wide?.high, (edge, limit) => edge <= limit * (1 + EDGE_SLACK)),
  ]);
};

const edgeVerdict = (
  edge: number | undefined,
  span: number | undefined,
  wide: number | undefined,
  isInside: (edge: number, limit: number) => boolean,
): Verdict => {
  if (!known(edge) || !known(wide)) return 'INCOMPLETE';
  if (known(span) && isInside(edge, span)) return 'PASS';
  if (!isInside(edge, wide)) return 'FAIL';
  return known(span) ? 'WARN' : 'INCOMPLETE';
};
