import { coherenceLimit as largestCoherence } from '../../core/level/detector';
import { defineFunction } from '../define';

export const coherenceLimit = defineFunction({
  name: 'COHERENCE.LIMIT',
  family: 'level and dynamic range',
  summary: 'Largest coherence that noise at the output leaves.',
  equation: 'γ² = 1/(1 + 10^(−M/10))',
  args: {
    signalToNoise: {
      unit: 'dB',
      symbol: 'M',
      text: 'Signal-to-noise ratio of the output.',
      atLeast: -200,
      atMost: 400,
    },
  },
  result: { unit: '1', symbol: 'γ²', text: 'Coherence.' },
  validity: 'Noise at the output only; noise at the input lowers it further.',
  source: { kind: 'derivation', from: 'γ² = signal power/(signal + noise power)' },

  compute: ({ signalToNoise }) => largestCoherence(signalToNoise),

  examples: [
    { args: [10], result: 0.9090909, within: 1e-6, from: 'by hand: 1/1.1' },
    { args: [20], result: 0.990099, within: 1e-6, from: 'by hand: 1/1.01' },
  ],
});
