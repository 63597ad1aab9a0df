import { complex, minus, over, plus, reciprocal, scaled, times, type Complex } from './complex';

const ONE = complex(1);

/**
 * Structural modification by a rigid point mass (Sherman and Morrison): exact for any linear structure driven by
 * forces, at every frequency and damping. Accelerances in (m/s²)/N, masses in kg, driving point in the mass's direction.
 */
export const loadingFactor = (drivingPoint: Complex, mass: number): Complex =>
  reciprocal(plus(ONE, scaled(drivingPoint, mass)));

/** A′_ij = A_ij − m·A_id·A_dj/(1 + m·A_dd), the mass at d. */
export const loadedAccelerance = (
  between: Complex,
  toMass: Complex,
  fromMass: Complex,
  drivingPoint: Complex,
  mass: number,
): Complex => minus(between, scaled(times(times(toMass, fromMass), loadingFactor(drivingPoint, mass)), mass));

/** Driving-point accelerance with the mass on it. A negative mass takes one off: then this is the free accelerance. */
export const loadedDrivingPoint = (drivingPoint: Complex, mass: number): Complex =>
  times(drivingPoint, loadingFactor(drivingPoint, mass));

/** Free accelerance from one measured with the mass on, A/(1 − m·A). */
export const freeDrivingPoint = (measured: Complex, mass: number): Complex => loadedDrivingPoint(measured, -mass);

/** Free accelerance between another point and the mass's: both measured with the mass on. */
export const freeTransfer = (measured: Complex, measuredDrivingPoint: Complex, mass: number): Complex =>
  over(measured, minus(ONE, scaled(measuredDrivingPoint, mass)));

/** Change of the level that a mass causes at its own point, a fraction: |1/(1 + m·A)| − 1. */
export const exactLevelEffect = (drivingPoint: Complex, mass: number): number => {
  const factor = loadingFactor(drivingPoint, mass);
  return Math.hypot(factor.re, factor.im) - 1;
};

/**
 * Largest mass in kg up to which the level at its point stays within ±tolerance (a fraction below 1) of the free one.
 * First crossing of |1 + m·A|² = 1 + 2m·Re A + m²|A|² with 1/(1−t)² or 1/(1+t)².
 */
export const massForLevelTolerance = (drivingPoint: Complex, tolerance: number): number => {
  const square = drivingPoint.re ** 2 + drivingPoint.im ** 2;
  const drop = rootsOf(square, drivingPoint.re, 1 - 1 / (1 - tolerance) ** 2);
  const rise = rootsOf(square, drivingPoint.re, 1 - 1 / (1 + tolerance) ** 2);
  return Math.min(...[...drop, ...rise].filter((root) => root >= 0));
};

/** Real roots of a·m² + 2b·m + c. */
const rootsOf = (a: number, b: number, c: number): number[] => {
  const inside = b * b - a * c;
  if (inside < 0) return [];
  const far = -(b + (b < 0 ? -1 : 1) * Math.sqrt(inside));
  return far === 0 ? [0] : [far / a, c / far];
};
