import { allowedBandwidth } from '../../core/level/noise';
import { defineFunction } from '../define';

export const bandwidthAllowed = defineFunction({
  name: 'BANDWIDTH.ALLOWED',
  family: 'level and dynamic range',
  summary: 'Widest band in which white noise keeps a signal-to-noise ratio over the smallest level.',
  equation: 'B = (a/(10^(M/20)·d))²',
  args: {
    lowest: {
      unit: 'g',
      symbol: 'a',
      text: 'Smallest level that must still be read, r.m.s.',
      above: 0,
      statistic: 'rms',
    },
    density: { unit: 'µg/√Hz', symbol: 'd', text: 'Total noise density.', above: 0 },
    signalToNoise: { unit: 'dB', symbol: 'M', text: 'Signal-to-noise ratio kept.', atLeast: 0, default: 20 },
  },
  result: { unit: 'Hz', symbol: 'B', text: 'Bandwidth; one Hann line of spacing Δf takes 1.5·Δf.' },
  validity: 'White noise.',
  source: { kind: 'derivation', from: 'a/σ = 10^(M/20) with σ = d·√B, solved for B' },

  compute: ({ lowest, density, signalToNoise }) => allowedBandwidth(lowest, signalToNoise, density),

  examples: [
    { args: [0.0008, 2], result: 1600, within: 1e-6, from: 'by hand: (800/(10 × 2))²' },
    { args: [0.001, 0.1, 40], result: 10000, within: 1e-6, from: 'by hand: (1000/(100 × 0.1))²' },
  ],
});
