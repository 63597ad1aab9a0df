/** One relative contribution to the uncertainty of a level; all as fractions of 1. */
export interface Contribution {
  readonly name: string;
  /** Half-width, expanded or standard value, before division. */
  readonly halfWidth: number;
  readonly divisor: number;
  /** Degrees of freedom of the estimate; infinite when it is taken as known. */
  readonly freedom: number;
  /** A known one-sided error that was not corrected: stated beside the uncertainty, never hidden in it. */
  readonly isBias: boolean;
  /** Contributions of one effect are the same error seen twice: only the largest counts. */
  readonly effect?: string;
}

export const standardUncertainty = (contribution: Contribution): number =>
  contribution.halfWidth / contribution.divisor;

/** The contributions that enter the sum of squares: no bias, and of each effect only the largest. */
export const counted = (contributions: readonly Contribution[]): readonly Contribution[] =>
  contributions.filter((one, i) => {
    if (one.isBias) return false;
    const rivals = contributions.filter((other) => !other.isBias && other.effect === one.effect);
    const largest = Math.max(...rivals.map(standardUncertainty));
    return (
      one.effect === undefined ||
      contributions.findIndex((o) => !o.isBias && o.effect === one.effect && standardUncertainty(o) === largest) === i
    );
  });

/** u_c = √Σu_i²: independent relative contributions to a product (JCGM 100:2008, 5.1.2; clause from memory). */
export const combinedUncertainty = (contributions: readonly Contribution[]): number =>
  Math.hypot(...counted(contributions).map(standardUncertainty));

/** Sum of the uncorrected one-sided errors, with their signs. */
export const statedBias = (contributions: readonly Contribution[]): number =>
  contributions.filter((one) => one.isBias).reduce((sum, one) => sum + one.halfWidth, 0);

/** U = k·u_c, enlarged by the size of an uncorrected bias. */
export const expandedUncertainty = (contributions: readonly Contribution[], coverageFactor: number): number =>
  coverageFactor * combinedUncertainty(contributions) + Math.abs(statedBias(contributions));

/** Welch and Satterthwaite: ν_eff = u_c⁴/Σ(u_i⁴/ν_i) (JCGM 100:2008, G.4.1; clause from memory). */
export const effectiveFreedom = (contributions: readonly Contribution[]): number => {
  const parts = counted(contributions).reduce((sum, one) => sum + standardUncertainty(one) ** 4 / one.freedom, 0);
  return parts === 0 ? Infinity : combinedUncertainty(contributions) ** 4 / parts;
};

/** Standard uncertainty that one more independent contribution may have; undefined when the limit is already spent. */
export const roomLeft = (
  contributions: readonly Contribution[],
  expandedLimit: number,
  coverageFactor: number,
): number | undefined => {
  const spent = Math.abs(statedBias(contributions));
  const square = ((expandedLimit - spent) / coverageFactor) ** 2 - combinedUncertainty(contributions) ** 2;
  return expandedLimit < spent || square < 0 ? undefined : Math.sqrt(square);
};
