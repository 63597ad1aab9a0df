import { failure } from '../../core/issue';
import { ratioForBias, ratioForCoherence } from '../../core/level/detector';
import { defineFunction } from '../define';

export const signalToNoiseNeeded = defineFunction({
  name: 'SIGNAL.TO.NOISE.NEEDED',
  family: 'level and dynamic range',
  summary: 'Signal-to-noise ratio that keeps the bias of an r.m.s. reading, or a coherence.',
  equation: 'M = −10·log₁₀((1 + b)² − 1); M = 10·log₁₀(γ²/(1 − γ²)); the larger of the two',
  args: {
    bias: { unit: '%', symbol: 'b', text: 'Largest excess of an r.m.s. reading.', above: 0, optional: true },
    coherence: {
      unit: '1',
      symbol: 'γ²',
      text: 'Coherence wanted, noise at the output.',
      above: 0,
      below: 1,
      optional: true,
    },
  },
  result: { unit: 'dB', symbol: 'M', text: 'Signal-to-noise ratio needed.' },
  validity: 'As NOISE.BIAS and COHERENCE.LIMIT, whose inverse it is.',
  source: { kind: 'derivation', from: 'mean squares of uncorrelated signals add, solved for the ratio' },

  compute: ({ bias, coherence }) => {
    if (bias === undefined && coherence === undefined) return failure({ code: 'missing', arg: 'bias' });
    return Math.max(
      bias === undefined ? -Infinity : ratioForBias(bias),
      coherence === undefined ? -Infinity : ratioForCoherence(coherence),
    );
  },

  examples: [
    { args: [5], result: 9.892761, within: 1e-6, from: 'by hand: −10·log₁₀ 0.1025' },
    { args: [null, 0.99], result: 19.95635, within: 1e-6, from: 'by hand: 10·log₁₀ 99' },
    { args: [5, 0.99], result: 19.95635, within: 1e-6, from: 'by hand: the coherence asks for more' },
  ],
});
