import { erfc } from '../numerics/erfc';
import { rootBetween } from '../numerics/root';

/** Euler–Mascheroni constant. Source: OEIS A001620. */
const EULER_GAMMA = 0.5772156649015329;

/** Share of time a Gaussian signal spends outside ±k times its r.m.s. value. Zero mean. */
export const shareOutside = (k: number): number => erfc(k / Math.SQRT2);

/** The k that a Gaussian signal exceeds for the given share of time, between 0 and 1. */
export const multipleExceeded = (share: number): number =>
  rootBetween((k) => share - shareOutside(k), 0, FURTHEST_MULTIPLE);

/** Beyond this multiple the share is below the smallest double. */
const FURTHEST_MULTIPLE = 38;

/**
 * Largest peak expected in a number of cycles of narrow-band Gaussian noise, as a multiple of its r.m.s. value.
 * Rayleigh peaks, independent of each other; at least a few cycles.
 * Source: Davenport 1964, mean of the largest value (from memory).
 */
export const largestPeak = (cycles: number): number => {
  const root = Math.sqrt(2 * Math.log(cycles));
  return root + EULER_GAMMA / root;
};

/** Cycles after which a peak of the given multiple is expected: the inverse of largestPeak on its rising branch. */
export const cyclesToPeak = (multiple: number): number => {
  const root = (multiple + Math.sqrt(multiple * multiple - 4 * EULER_GAMMA)) / 2;
  return Math.exp((root * root) / 2);
};

/** Smallest multiple that largestPeak can give, 2·√γ. */
export const LEAST_PEAK = 2 * Math.sqrt(EULER_GAMMA);

/** R.m.s. of a sine (peak) on random (r.m.s.): mean squares add. */
export const combinedRms = (sinePeak: number, randomRms: number): number =>
  Math.hypot(sinePeak / Math.SQRT2, randomRms);

/** Peak to plan for, sine peak plus a multiple of the random r.m.s. Common practice, no source. */
export const combinedPeak = (sinePeak: number, randomRms: number, multiple: number): number =>
  sinePeak + multiple * randomRms;
