import { rmsBias } from '../../core/level/detector';
import { defineFunction } from '../define';

export const noiseBias = defineFunction({
  name: 'NOISE.BIAS',
  family: 'level and dynamic range',
  summary: 'By how much noise inflates an r.m.s. reading.',
  equation: 'b = √(1 + 10^(−M/10)) − 1',
  args: {
    signalToNoise: {
      unit: 'dB',
      symbol: 'M',
      text: 'Signal-to-noise ratio; negative when noise exceeds the signal.',
      atLeast: -200,
      atMost: 400,
    },
  },
  result: { unit: '%', symbol: 'b', text: 'Excess of the reading.' },
  validity: 'Noise uncorrelated with the signal; can be corrected when the noise is known.',
  source: { kind: 'derivation', from: 'mean squares of uncorrelated signals add' },

  compute: ({ signalToNoise }) => rmsBias(signalToNoise),

  examples: [
    { args: [0], result: 41.42136, within: 1e-6, from: 'by hand: √2 − 1' },
    { args: [10], result: 4.880885, within: 1e-6, from: 'by hand: √1.1 − 1' },
    { args: [20], result: 0.4987562, within: 1e-6, from: 'by hand: √1.01 − 1' },
  ],
});
