import { HANN_NOISE_BANDWIDTH } from './noise';

/** Noise inflates an r.m.s. reading by √(1+10^(−M/10)) − 1, M the signal-to-noise ratio in dB. Uncorrelated noise. */
export const rmsBias = (signalToNoiseDb: number): number => Math.sqrt(1 + 10 ** (-signalToNoiseDb / 10)) - 1;

/** Signal-to-noise ratio in dB at which noise inflates an r.m.s. reading by the given fraction. */
export const ratioForBias = (bias: number): number => -10 * Math.log10((1 + bias) ** 2 - 1);

/** Largest coherence with noise at the output, 1/(1+10^(−M/10)). */
export const coherenceLimit = (signalToNoiseDb: number): number => 1 / (1 + 10 ** (-signalToNoiseDb / 10));

/** Signal-to-noise ratio in dB that a coherence asks for. */
export const ratioForCoherence = (coherence: number): number => 10 * Math.log10(coherence / (1 - coherence));

/** Equivalent noise bandwidth of a window in line spacings; the flat top's depends on its design (from memory). */
export const WINDOW_BANDWIDTH = { Hann: HANN_NOISE_BANDWIDTH, rectangular: 1, 'flat top': 3.8 } as const;

/** Octave ratios of IEC 61260-1 (from memory): ten to the three tenths; two was allowed by older editions. */
const OCTAVE = { ten: 10 ** 0.3, two: 2 } as const;
export type OctaveBase = keyof typeof OCTAVE;

/** Bandwidth in Hz of a fractional-octave band, 3 for thirds, round an exact centre in Hz. */
export const octaveBandwidth = (centre: number, fraction: number, base: OctaveBase): number =>
  centre * (OCTAVE[base] ** (1 / (2 * fraction)) - OCTAVE[base] ** (-1 / (2 * fraction)));
