/**
 * One high-pass pole |H| = 1/√(1+(fc/f)²), with loss = 1 − |H| as a fraction (0.05 is −5 %).
 * Frequencies in Hz, times in s. Valid for a first-order discharge or AC coupling.
 */

/** f/fc at which one pole loses the given fraction. */
export const frequencyOverCorner = (loss: number): number => (1 - loss) / Math.sqrt(loss * (2 - loss));

/** Corner (−3 dB) in Hz of a low limit stated with its loss. */
export const cornerFromLimit = (lowLimit: number, loss: number): number => lowLimit / frequencyOverCorner(loss);

/** Corner in Hz of a discharge time constant in s, 1/(2πτ). The same expression takes a corner to its time constant. */
export const cornerFromTimeConstant = (timeConstant: number): number => 1 / (2 * Math.PI * timeConstant);
