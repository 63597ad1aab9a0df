/** Distributions of a stated ± value; `normal` means an expanded value with k = 2 unless a divisor is given. */
export const DISTRIBUTIONS = ['rectangular', 'triangular', 'U-shaped', 'normal', 'standard'] as const;
export type Distribution = (typeof DISTRIBUTIONS)[number];

/** JCGM 100:2008, 4.3.3 to 4.3.9 and (U-shaped, unknown angle) the arcsine distribution; clauses from memory. */
const DIVISORS: Record<Distribution, number> = {
  rectangular: Math.sqrt(3),
  triangular: Math.sqrt(6),
  'U-shaped': Math.SQRT2,
  normal: 2,
  standard: 1,
};

/** What a stated half-width is divided by to become a standard uncertainty. */
export const divisorOf = (distribution: Distribution): number => DIVISORS[distribution];
