/** Amplitude ratio in dB, 20·log10. */
export const decibels = (amplitude: number, reference: number): number => 20 * Math.log10(amplitude / reference);

/** Amplitude ratio of a level difference in dB. */
export const amplitudeRatio = (levelDb: number): number => 10 ** (levelDb / 20);

/** Signal-to-noise ratio in dB of an r.m.s. level over r.m.s. noise in the same band. */
export const signalToNoise = (lowestRms: number, noiseRms: number): number => decibels(lowestRms, noiseRms);

/** Headroom in dB of the upper limit over the largest peak. */
export const headroom = (highestPeak: number, ceiling: number): number => decibels(ceiling, highestPeak);

/** Usable range in dB: from the smallest level that keeps the wanted signal-to-noise ratio (dB) up to the upper limit. */
export const availableRange = (ceiling: number, noiseRms: number, signalToNoiseDb: number): number =>
  decibels(ceiling, noiseRms) - signalToNoiseDb;
