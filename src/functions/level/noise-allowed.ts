import { allowedDensity, noiseBandwidth } from '../../core/level/noise';
import { ANALYSED_BAND, inBand } from './band';
import { defineFunction } from '../define';

export const noiseAllowed = defineFunction({
  name: 'NOISE.ALLOWED',
  family: 'level and dynamic range',
  summary: 'White noise density that keeps a signal-to-noise ratio over the smallest level.',
  equation: 'd = a/(10^(M/20)·√B), B = f₂ − f₁ or 1.5·Δf',
  args: {
    lowest: {
      unit: 'g',
      symbol: 'a',
      text: 'Smallest level that must still be read, r.m.s.',
      above: 0,
      statistic: 'rms',
    },
    signalToNoise: { unit: 'dB', symbol: 'M', text: 'Signal-to-noise ratio kept.', atLeast: 0, default: 20 },
    ...ANALYSED_BAND,
  },
  result: { unit: 'µg/√Hz', symbol: 'd', text: 'Largest density of the total noise.' },
  validity:
    'White noise over the band; a density that rises towards low frequency must stay below it on average of squares.',
  source: { kind: 'derivation', from: 'a/σ = 10^(M/20) with σ = d·√B' },

  compute: ({ lowest, signalToNoise, low, high, lineSpacing }) =>
    inBand(low, high, () => allowedDensity(lowest, signalToNoise, noiseBandwidth(low, high, lineSpacing))),

  examples: [
    { args: [0.0008, 20, 5, 2000], result: 1.791095, within: 1e-6, from: 'by hand: 800 µg/(10 × √1995 Hz)' },
    { args: [0.001, 40, 0, 10000], result: 0.1, within: 1e-6, from: 'by hand: 1000 µg/(100 × 100)' },
    { args: [0.0008, 20, 5, 2000, 1], result: 65.31973, within: 1e-6, from: 'by hand, one Hann line: 80/√1.5' },
  ],
});
