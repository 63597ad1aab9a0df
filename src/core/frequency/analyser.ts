/** Common practice, no source: the flat part of an anti-alias filter ends at the sample rate over this. */
export const SAMPLES_PER_TOP_FREQUENCY = 2.56;

/** Highest alias-free frequency in Hz of an analyser at a sample rate in Hz. */
export const analyserLimit = (sampleRate: number): number => sampleRate / SAMPLES_PER_TOP_FREQUENCY;

/** Sample rate in Hz needed for a highest frequency in Hz. */
export const sampleRateNeeded = (frequency: number): number => frequency * SAMPLES_PER_TOP_FREQUENCY;

/** Phase in rad that a delay in s between two channels makes at a frequency in Hz. */
export const delayPhase = (frequency: number, delay: number): number => 2 * Math.PI * frequency * delay;

/** Delay in s that makes a phase in rad at a frequency in Hz. */
export const delayAllowed = (frequency: number, phase: number): number => phase / (2 * Math.PI * frequency);
