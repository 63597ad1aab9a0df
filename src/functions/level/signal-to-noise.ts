import { signalToNoise as ratio } from '../../core/level/margin';
import { defineFunction } from '../define';

export const signalToNoise = defineFunction({
  name: 'SIGNAL.TO.NOISE',
  family: 'level and dynamic range',
  summary: 'Margin of the smallest level over the total noise.',
  equation: 'M = 20·log₁₀(a/σ)',
  args: {
    lowest: {
      unit: 'g',
      symbol: 'a',
      text: 'Smallest level that must still be read, r.m.s.',
      above: 0,
      statistic: 'rms',
    },
    noise: { unit: 'g', symbol: 'σ', text: 'Total r.m.s. noise in the same band.', above: 0, statistic: 'rms' },
  },
  result: { unit: 'dB', symbol: 'M', text: 'Signal-to-noise ratio.' },
  validity: 'Level and noise in the same band and both r.m.s.',
  source: { kind: 'derivation', from: 'definition of a level difference of amplitudes' },

  compute: ({ lowest, noise }) => ratio(lowest, noise),

  examples: [
    { args: [0.001, 0.0001], result: 20, within: 1e-12, from: 'by hand: ten times is 20 dB' },
    { args: ['0.8 mg', '0.178 mg'], result: 13.0534, within: 1e-5, from: 'by hand: 20·log₁₀ 4.494382' },
  ],
});
