/**
 * One high-pass pole |H| = 1/√(1+(fc/f)²), with loss = 1 − |H| as a fraction (0.05 is −5 %).
 * Frequencies in Hz, times in s, phases in rad. Valid for a first-order discharge or AC coupling.
 */

/** f/fc at which one pole loses the given fraction. */
export const frequencyOverCorner = (loss: number): number => (1 - loss) / Math.sqrt(loss * (2 - loss));

/** Fraction lost at the given level in dB below the middle. */
export const lossOfDecibels = (lossDb: number): number => -Math.expm1((-lossDb * Math.LN10) / 20);

/** f/fc at which one pole leads by the given phase. */
export const frequencyOverCornerAtPhase = (phase: number): number => 1 / Math.tan(phase);

/** Corner (−3 dB) in Hz of a low limit stated with its loss. */
export const cornerFromLimit = (lowLimit: number, loss: number): number => lowLimit / frequencyOverCorner(loss);

/** Corner in Hz of a discharge time constant in s, 1/(2πτ). The same expression takes a corner to its time constant. */
export const cornerFromTimeConstant = (timeConstant: number): number => 1 / (2 * Math.PI * timeConstant);

/**
 * Largest further corner in Hz that keeps the loss at a frequency, beside poles that are there already;
 * 0 or less, or NaN, when those alone lose more.
 */
export const cornerAllowed = (frequency: number, loss: number, others: readonly number[]): number => {
  let square = 1 / ((1 - loss) * (1 - loss));
  for (const corner of others) square /= 1 + (corner / frequency) ** 2;
  return frequency * Math.sqrt(square - 1);
};

/** The same for the sum of phase leads in rad; 0 or less when the others alone lead by more. */
export const cornerAllowedByPhase = (frequency: number, phase: number, others: readonly number[]): number => {
  let left = phase;
  for (const corner of others) left -= Math.atan2(corner, frequency);
  return frequency * Math.tan(left);
};

/** Time in s in which a step decays to a residue through one pole. Source: exponential decay. */
export const settlingTime = (corner: number, step: number, residue: number): number =>
  Math.log(step / residue) / (2 * Math.PI * corner);

/** Smallest corner in Hz at which a step decays to a residue within a wait in s. */
export const cornerForSettling = (wait: number, step: number, residue: number): number =>
  Math.log(step / residue) / (2 * Math.PI * wait);
