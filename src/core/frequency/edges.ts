import { polesGain, resonanceGain } from './response';

/**
 * Inverses of the flatness band |H/H_ref − 1| ≤ tolerance at one edge, in closed form. Squared gains of the blocks are
 * used throughout: of a resonance 1/A(f), A = 1 + (1/Q²−2)·f²u + f⁴u² with u = 1/f_r²; of a pole 1/(1+c/f²), c = f_c².
 * Frequencies in Hz. Valid where the response is monotone from the reference to the edge, or never rises by the tolerance.
 */
export interface Edge {
  readonly frequency: number;
  readonly reference: number;
  /** Fraction of 1, either way. */
  readonly tolerance: number;
}

/** Least mounted resonance that keeps the band at an edge beside high-pass poles; Infinity when those alone leave it. */
export const resonanceForEdge = (
  { frequency, reference, tolerance }: Edge,
  qualityFactor: number,
  lowPoles: readonly number[],
): number => {
  const poles = (polesGain(lowPoles, frequency) / polesGain(lowPoles, reference)) ** 2;
  const damping = 1 / (qualityFactor * qualityFactor) - 2;
  const [f, r] = [frequency ** 2, reference ** 2];
  const difference = (atEdge: number, atReference: number) =>
    firstPositiveRoot(
      atEdge * f * f - atReference * r * r,
      damping * (atEdge * f - atReference * r),
      atEdge - atReference,
    );
  const rise = (1 + tolerance) ** 2;
  const fall = (1 - tolerance) ** 2;
  if (poles > rise || poles < fall) return Infinity;
  // rise·A(edge) ≥ poles·A(reference) ≥ fall·A(edge); u = 0 is an infinite resonance, where both hold.
  const most = Math.min(difference(rise, poles), difference(-fall, -poles));
  return 1 / Math.sqrt(most);
};

/**
 * Largest further corner that keeps the band at an edge, beside other poles and a resonance (absent: far away).
 * Infinity when a corner of any size would; −Infinity when the others alone leave the band.
 */
export const cornerForEdge = (
  { frequency, reference, tolerance }: Edge,
  others: readonly number[],
  resonance?: { readonly frequency: number; readonly qualityFactor: number },
): number => {
  const ownGain = (at: number) =>
    polesGain(others, at) * (resonance ? resonanceGain(resonance.frequency, resonance.qualityFactor, at) : 1);
  const rest = (ownGain(frequency) / ownGain(reference)) ** 2;
  const bound = (1 + (frequency < reference ? -tolerance : tolerance)) ** 2;
  // Below the reference: rest·(1+c/r²) ≥ bound·(1+c/f²); above it ≤. Both are c·slope ≤ room.
  const sign = frequency < reference ? 1 : -1;
  const room = sign * (rest - bound);
  const slope = sign * (bound / frequency ** 2 - rest / reference ** 2);
  if (room < 0) return -Infinity;
  return slope > 0 ? Math.sqrt(room / slope) : Infinity;
};

/** Of a·u² + b·u + c with c ≥ 0; Infinity when there is none. */
const firstPositiveRoot = (a: number, b: number, c: number): number => {
  const discriminant = b * b - 4 * a * c;
  if (discriminant < 0) return Infinity;
  // Without cancellation: the two roots are q/a and c/q.
  const q = -(b + (b < 0 ? -1 : 1) * Math.sqrt(discriminant)) / 2;
  const roots = [q / a, c / q].filter((root) => root > 0);
  return Math.min(Infinity, ...roots);
};
