/** Standard uncertainty from transverse motion at an unknown angle: S_t·(a_t/a)/√2, fractions. */
export const transverseUncertainty = (transverseSensitivity: number, levelRatio: number): number =>
  (transverseSensitivity * levelRatio) / Math.SQRT2;

/** Apparent acceleration from base strain, m/s²: sensitivity in (m/s²) per strain of 1. */
export const strainError = (sensitivity: number, strain: number): number => sensitivity * strain;

/** Relative standard uncertainty of an r.m.s. value of band-limited noise: 1/(2√(BT)). */
export const statisticalUncertainty = (bandwidth: number, duration: number): number =>
  1 / (2 * Math.sqrt(bandwidth * duration));

/** Averaging time in s that brings the statistical uncertainty down to this fraction. */
export const durationForUncertainty = (bandwidth: number, uncertainty: number): number =>
  1 / (4 * bandwidth * uncertainty ** 2);

/** Loss of level by an angle (rad) between the sensor's and the intended axis, 1 − cos. */
export const misalignmentLoss = (angle: number): number => 1 - Math.cos(angle);
