/** Above this the continued fraction converges fast; below it the series loses no digits that matter. */
const SERIES_UP_TO = 2;
const FRACTION_DEPTH = 120;

/**
 * Complementary error function for x ≥ 0, to about 12 digits.
 * Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 7.1.6 and 7.1.14 (from memory).
 */
export const erfc = (x: number): number => {
  if (x < SERIES_UP_TO) {
    let term = x;
    let sum = x;
    for (let n = 1; term > sum * Number.EPSILON; n += 1) {
      term *= (2 * x * x) / (2 * n + 1);
      sum += term;
    }
    return 1 - (2 / Math.sqrt(Math.PI)) * Math.exp(-x * x) * sum;
  }
  let tail = x;
  for (let k = FRACTION_DEPTH; k > 0; k -= 1) tail = x + k / 2 / tail;
  return Math.exp(-x * x) / (tail * Math.sqrt(Math.PI));
};
