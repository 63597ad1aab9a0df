import { HANN_NOISE_BANDWIDTH, modelDensity, modelNoise } from '../../core/level/noise';
import { ANALYSED_BAND, inBand } from './band';
import { defineFunction } from '../define';

export const noiseModel = defineFunction({
  name: 'NOISE.MODEL',
  family: 'level and dynamic range',
  summary: 'R.m.s. noise in the analysed band of a sensor described by a white level and a 1/f corner.',
  equation: 'σ = w·√(B + f_k·ln(f₂/f₁)); in one Hann line σ = w·√(1 + f_k/f₁)·√(1.5·Δf)',
  args: {
    white: { unit: 'µg/√Hz', symbol: 'w', text: 'White noise density.', above: 0 },
    corner: {
      unit: 'Hz',
      symbol: 'f_k',
      text: 'Frequency where the 1/f part equals the white part; 0 for none.',
      atLeast: 0,
    },
    ...ANALYSED_BAND,
  },
  result: { unit: 'g', symbol: 'σ', text: 'R.m.s. noise.' },
  validity: 'Density squared = w²·(1 + f_k/f). Down to 0 Hz there is no finite value unless the corner is 0.',
  source: { kind: 'derivation', from: '∫w²·(1 + f_k/f) df' },

  compute: ({ white, corner, low, high, lineSpacing }) =>
    inBand(low, high, () =>
      lineSpacing === undefined
        ? modelNoise(white, corner, low, high)
        : modelDensity(white, corner, low) * Math.sqrt(HANN_NOISE_BANDWIDTH * lineSpacing),
    ),

  examples: [
    { args: [2, 50, 1, 1000], result: 7.3331787e-5, within: 1e-7, from: 'scipy.integrate.quad of the squared density' },
    { args: [3, 0, 0, 10000], result: 0.0003, within: 1e-6, from: 'by hand, white: 3 µg/√Hz × 100' },
    { args: [2, 30, 10, 100, 1], result: 4.898979e-6, within: 1e-6, from: 'by hand, one Hann line: 2 × √4 × √1.5 µg' },
  ],
});
