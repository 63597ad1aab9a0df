/** Common practice, no source: the flat part of an anti-alias filter ends at the sample rate over this. */
export const SAMPLES_PER_TOP_FREQUENCY = 2.56;

/** Highest alias-free frequency in Hz of an analyser at a sample rate in Hz. */
export const analyserLimit = (sampleRate: number): number => sampleRate / SAMPLES_PER_TOP_FREQUENCY;
