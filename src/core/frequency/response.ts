/** A channel's amplitude response: high-pass poles (corners in Hz, 0 for none) times a second-order resonance. */
export interface Response {
  readonly lowPoles: readonly number[];
  /** Mounted resonance in Hz. */
  readonly resonance: number;
  /** Quality factor of the resonance, 1/(2ζ). */
  readonly qualityFactor: number;
}

/** |H| of the high-pass poles: Π 1/√(1+(fc/f)²). Rises with f. */
export const polesGain = (lowPoles: readonly number[], frequency: number): number => {
  let loss = 1;
  for (const corner of lowPoles) {
    const ratio = corner / frequency;
    if (corner > 0) loss *= 1 + ratio * ratio;
  }
  return 1 / Math.sqrt(loss);
};

/** |H| of a second-order resonance: 1/√((1−x²)²+(x/Q)²), x = f/fr. One degree of freedom, linear. */
export const resonanceGain = (resonance: number, qualityFactor: number, frequency: number): number => {
  const x2 = (frequency / resonance) ** 2;
  return 1 / Math.sqrt((1 - x2) ** 2 + x2 / (qualityFactor * qualityFactor));
};

/** |H| of the whole channel relative to its flat middle. Blocks are independent of each other. */
export const gain = (response: Response, frequency: number): number =>
  polesGain(response.lowPoles, frequency) * resonanceGain(response.resonance, response.qualityFactor, frequency);

/** Frequency in Hz at which the resonance alone peaks, fr·√(1−1/(2Q²)); 0 when it has no peak. */
export const peakFrequency = ({ resonance, qualityFactor }: Response): number =>
  resonance * Math.sqrt(Math.max(0, 1 - 1 / (2 * qualityFactor * qualityFactor)));

/** Phase lead in rad of the high-pass poles: Σ atan(fc/f). */
export const polesPhase = (lowPoles: readonly number[], frequency: number): number => {
  let phase = 0;
  for (const corner of lowPoles) phase += Math.atan2(corner, frequency);
  return phase;
};

/** Phase in rad of a second-order resonance, 0 far below to −π far above. */
export const resonancePhase = (resonance: number, qualityFactor: number, frequency: number): number => {
  const x = frequency / resonance;
  return -Math.atan2(x / qualityFactor, 1 - x * x);
};
