import type { Verdict } from '../verdict';

/**
 * Error in m/s² from a steady temperature ramp through one high-pass pole, reached after about five time constants:
 * s_T·R/(2π·f_c). s_T in (m/s²)/K, R in K/s, f_c in Hz. Ignores the lag of the case: high for ramps, low for draughts.
 */
export const rampError = (sensitivity: number, rate: number, corner: number): number =>
  (sensitivity * rate) / (2 * Math.PI * corner);

/** Lowest corner in Hz that keeps a ramp error. */
export const cornerForRamp = (sensitivity: number, rate: number, allowedError: number): number =>
  (sensitivity * rate) / (2 * Math.PI * allowedError);

/** Steepest ramp in K/s that keeps an error. */
export const rampForError = (sensitivity: number, corner: number, allowedError: number): number =>
  (2 * Math.PI * corner * allowedError) / sensitivity;

/** Share of the lowest level from which a ramp error warns, and reach of its spectrum in corners (common practice). */
const RAMP_SHARE = 1 / 3;
const RAMP_REACH = 5;

export const rampVerdict = (error: number, lowestLevel: number, bandLow: number, corner: number): Verdict => {
  if (error > lowestLevel && bandLow < RAMP_REACH * corner) return 'FAIL';
  return error > lowestLevel * RAMP_SHARE ? 'WARN' : 'PASS';
};

/** Largest zero offset in m/s² over low..high (°C) of a drift in (m/s²)/K from the temperature of the zero. */
export const zeroOffset = (drift: number, low: number, high: number, zeroTemperature: number): number =>
  Math.abs(drift) * Math.max(Math.abs(low - zeroTemperature), Math.abs(high - zeroTemperature));

/** Largest drift in (m/s²)/K that keeps a zero offset. */
export const driftForOffset = (offset: number, low: number, high: number, zeroTemperature: number): number =>
  offset / Math.max(Math.abs(low - zeroTemperature), Math.abs(high - zeroTemperature));

/** Heat in W that a constant-current sensor makes of its bias voltage. */
export const sensorHeat = (bias: number, current: number): number => bias * current;
