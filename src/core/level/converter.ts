/** Ratio of an r.m.s. full-scale sine to the quantisation noise of one bit's step: √1.5 times 2^bits. */
const SINE_OVER_STEP_NOISE = Math.sqrt(1.5);

/** Quantisation step in V of a converter with a range of ± the given volts. */
export const quantisationStep = (bits: number, range: number): number => (2 * range) / 2 ** bits;

/** R.m.s. quantisation noise in V, step/√12: error uniform over a step, spread over 0 to half the sample rate. */
export const quantisationNoise = (bits: number, range: number): number => quantisationStep(bits, range) / Math.sqrt(12);

/** Signal-to-noise ratio in dB of an ideal converter: 6.02·bits + 1.76. */
export const idealRange = (bits: number): number => 20 * Math.log10(2 ** bits * SINE_OVER_STEP_NOISE);

/** Bits of the ideal converter with the same signal-to-noise ratio. */
export const effectiveBits = (dynamicRangeDb: number): number =>
  Math.log2(10 ** (dynamicRangeDb / 20) / SINE_OVER_STEP_NOISE);
