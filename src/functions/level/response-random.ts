import { randomResponse } from '../../core/level/one-mode';
import { defineFunction } from '../define';

export const responseRandom = defineFunction({
  name: 'RESPONSE.RANDOM',
  family: 'level and dynamic range',
  summary: 'R.m.s. response of one mode to random vibration at its base.',
  equation: 'σ = √(π/2·f_n·Q·P)',
  args: {
    naturalFrequency: { unit: 'Hz', symbol: 'f_n', text: 'Natural frequency of the mode.', above: 0 },
    qualityFactor: { unit: '1', symbol: 'Q', text: 'Quality factor, 1/(2ζ).', above: 0 },
    psd: { unit: 'g²/Hz', symbol: 'P', text: 'Spectral density of the base at the natural frequency.', above: 0 },
  },
  result: { unit: 'g', symbol: 'σ', text: 'R.m.s. absolute acceleration of the response.' },
  validity:
    'One lightly damped mode, spectrum flat about the natural frequency. A clipped shaker drive does not clip the response.',
  source: {
    kind: 'paper',
    cite: 'J. W. Miles 1954, On structural fatigue under random loading',
    locator: 'response of one degree of freedom to white noise; no page',
    read: 'from memory',
  },

  compute: ({ naturalFrequency, qualityFactor, psd }) => randomResponse(naturalFrequency, qualityFactor, psd),

  examples: [
    { args: [100, 10, 0.04], result: 7.926655, within: 1e-6, from: 'by hand: √(1.5707963 × 100 × 10 × 0.04)' },
    { args: [230, 25, 0.02], result: 13.4403, within: 1e-6, from: 'by hand: √(1.5707963 × 230 × 25 × 0.02)' },
  ],
});
