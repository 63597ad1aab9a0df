import { allowedPsd } from '../../core/level/one-mode';
import { defineFunction } from '../define';

export const psdAllowed = defineFunction({
  name: 'PSD.ALLOWED',
  family: 'level and dynamic range',
  summary: 'Flat spectral density at which one mode responds with a given r.m.s. level.',
  equation: 'P = σ²/(π/2·f_n·Q)',
  args: {
    naturalFrequency: { unit: 'Hz', symbol: 'f_n', text: 'Natural frequency of the mode.', above: 0 },
    qualityFactor: { unit: '1', symbol: 'Q', text: 'Quality factor, 1/(2ζ).', above: 0 },
    rms: { unit: 'g', symbol: 'σ', text: 'R.m.s. response allowed.', above: 0, statistic: 'rms' },
  },
  result: { unit: 'g²/Hz', symbol: 'P', text: 'Spectral density of the base about the natural frequency.' },
  validity: 'As RESPONSE.RANDOM, whose inverse it is.',
  source: {
    kind: 'paper',
    cite: 'J. W. Miles 1954, On structural fatigue under random loading',
    locator: 'solved for the input; no page',
    read: 'from memory',
  },

  compute: ({ naturalFrequency, qualityFactor, rms }) => allowedPsd(naturalFrequency, qualityFactor, rms),

  examples: [
    { args: [100, 10, 10], result: 0.06366198, within: 1e-6, from: 'by hand: 100/1570.7963' },
    { args: [50, 20, 1], result: 0.0006366198, within: 1e-6, from: 'by hand: 1/1570.7963' },
  ],
});
