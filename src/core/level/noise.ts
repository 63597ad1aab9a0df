import type { Curve } from '../curve';
import { extendedArea, extendedValue } from './spectrum';

/** Equivalent noise bandwidth of a Hann window in line spacings; exact for the sampled window, Σw²·N/(Σw)². */
export const HANN_NOISE_BANDWIDTH = 1.5;

/** Bandwidth in Hz in which noise is read: the whole band, or one Hann line when a line spacing is given. */
export const noiseBandwidth = (low: number, high: number, lineSpacing?: number): number =>
  lineSpacing === undefined ? high - low : HANN_NOISE_BANDWIDTH * lineSpacing;

/**
 * R.m.s. noise of a density table (y per √Hz over Hz) in a band, in the unit of y.
 * Straight lines on log-log axes; below the table its first slope goes on (never rising with f), above it the last value.
 * With a line spacing: the density at the lower band edge in one Hann line. Stationary noise.
 * Source: Parseval, σ² = ∫d² df.
 */
export const bandNoise = (density: Curve, low: number, high: number, lineSpacing?: number): number =>
  lineSpacing === undefined
    ? Math.sqrt(extendedArea(density, 2, low, high))
    : extendedValue(density, low) * Math.sqrt(HANN_NOISE_BANDWIDTH * lineSpacing);

/** Whether bandNoise had to go beyond the table. */
export const isExtrapolated = (density: Curve, low: number, high: number, lineSpacing?: number): boolean =>
  low < density.x[0]! || (lineSpacing === undefined ? high : low) > density.x[density.x.length - 1]!;

/** R.m.s. of white noise, in the density's unit times √Hz. */
export const whiteNoise = (density: number, bandwidth: number): number => density * Math.sqrt(bandwidth);

/**
 * Noise density of an analyser input in V/√Hz, from its range (peak volt) and its dynamic range in dB
 * below an r.m.s. full-scale sine, taken white to half the sample rate (Hz).
 */
export const inputNoiseDensity = (range: number, dynamicRangeDb: number, sampleRate: number): number =>
  inputNoise(range, dynamicRangeDb) / Math.sqrt(sampleRate / 2);

/** R.m.s. noise of an analyser input in V over its whole band, 0 to half the sample rate. */
export const inputNoise = (range: number, dynamicRangeDb: number): number =>
  (range / Math.SQRT2) * 10 ** (-dynamicRangeDb / 20);

/**
 * Noise density of a charge amplifier in C/√Hz: noise voltage (V/√Hz) on everything that hangs at its input (F).
 * White; leaves out the low-frequency rise of a leaky, hot source.
 */
export const chargeNoiseDensity = (
  noiseVoltage: number,
  sensorCapacitance: number,
  cableCapacitance: number,
  feedbackCapacitance: number,
): number => noiseVoltage * (sensorCapacitance + cableCapacitance + feedbackCapacitance);

/** Total of uncorrelated r.m.s. parts; 0 for no parts. */
export const rootSumSquare = (parts: readonly number[]): number => {
  let sum = 0;
  for (const part of parts) sum += part * part;
  return Math.sqrt(sum);
};

/**
 * R.m.s. noise of white noise with a 1/f rise, d² = w²·(1 + fk/f): w·√(B + fk·ln(f2/f1)).
 * Corner in Hz where the 1/f part equals the white part; low above 0 unless the corner is 0.
 */
export const modelNoise = (white: number, corner: number, low: number, high: number): number =>
  white * Math.sqrt(high - low + (corner > 0 ? corner * Math.log(high / low) : 0));

/** Density of the same model at one frequency. */
export const modelDensity = (white: number, corner: number, frequency: number): number =>
  white * Math.sqrt(1 + corner / frequency);

/** Largest white density that keeps a signal-to-noise ratio (dB) of an r.m.s. level in a bandwidth (Hz). */
export const allowedDensity = (lowestRms: number, signalToNoiseDb: number, bandwidth: number): number =>
  lowestRms / (10 ** (signalToNoiseDb / 20) * Math.sqrt(bandwidth));

/** Widest band in Hz in which white noise of a density keeps a signal-to-noise ratio (dB) of an r.m.s. level. */
export const allowedBandwidth = (lowestRms: number, signalToNoiseDb: number, density: number): number =>
  (lowestRms / (10 ** (signalToNoiseDb / 20) * density)) ** 2;
