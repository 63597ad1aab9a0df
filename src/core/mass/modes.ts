import { complex, plus, reciprocal, scaled, type Complex } from './complex';
import { symmetricEigenvalues } from './symmetric-eigenvalues';

/** One mode as seen at one point in one direction. */
export interface Mode {
  /** Hz; 0 for a rigid-body mode. */
  readonly frequency: number;
  /** kg, in the scaling of `shape`. */
  readonly modalMass: number;
  readonly shape: number;
}

/**
 * Driving-point accelerance in (m/s²)/N from a list of modes: −ω²·Σ φ²/(M_r(ω_r²(1 + jη) − ω²)), η = 2ζ. Structural
 * damping: equal to viscous damping at each resonance. Modes left out are missed most at antiresonances.
 */
export const modalAccelerance = (modes: readonly Mode[], dampingRatio: number, frequency: number): Complex => {
  const square = (2 * Math.PI * frequency) ** 2;
  return modes.reduce((sum, mode) => {
    const own = (2 * Math.PI * mode.frequency) ** 2;
    const stiffness = complex(own - square, 2 * dampingRatio * own);
    return plus(sum, scaled(reciprocal(stiffness), (-square * mode.shape ** 2) / mode.modalMass));
  }, complex(0));
};

/**
 * Natural frequencies in Hz, rising, with a point mass (kg) added where the shapes were taken. Exact within the span of
 * the modes: eigenvalues of B^(−½)·Λ·B^(−½), B = I + m·ψψᵀ, ψ = φ/√M_r.
 */
export const loadedFrequencies = (modes: readonly Mode[], addedMass: number): number[] => {
  const shape = modes.map((mode) => mode.shape / Math.sqrt(mode.modalMass));
  const size = shape.reduce((sum, value) => sum + value ** 2, 0);
  const pull = size === 0 ? 0 : (1 / Math.sqrt(1 + addedMass * size) - 1) / size;
  const root = shape.map((row, i) => shape.map((column, k) => (i === k ? 1 : 0) + pull * row * column));
  const own = modes.map((mode) => (2 * Math.PI * mode.frequency) ** 2);
  const matrix = root.map((row) =>
    root.map((column) => row.reduce((sum, value, k) => sum + value * own[k]! * column[k]!, 0)),
  );
  return symmetricEigenvalues(matrix)
    .map((value) => Math.sqrt(Math.max(value, 0)) / (2 * Math.PI))
    .sort((a, b) => a - b);
};
