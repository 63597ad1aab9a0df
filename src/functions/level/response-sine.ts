import { defineFunction } from '../define';

export const responseSine = defineFunction({
  name: 'RESPONSE.SINE',
  family: 'level and dynamic range',
  summary: 'Peak response of a mode driven by a sine at its resonance.',
  equation: 'a_out = Q·a_in',
  args: {
    level: { unit: 'g', symbol: 'a_in', text: 'Peak level at the base.', above: 0, statistic: 'peak' },
    qualityFactor: { unit: '1', symbol: 'Q', text: 'Quality factor, 1/(2ζ).', above: 0 },
  },
  result: { unit: 'g', symbol: 'a_out', text: 'Peak level of the response.' },
  validity: 'Lightly damped mode at its resonance; the exact factor √(1 + Q²) is within 0.5 % from Q = 10.',
  source: { kind: 'derivation', from: 'transmissibility of one degree of freedom at resonance for small damping' },

  compute: ({ level, qualityFactor }) => qualityFactor * level,

  examples: [
    { args: [1, 25], result: 25, within: 1e-6, from: 'by hand: 25 × 1' },
    { args: [0.5, 10], result: 5, within: 1e-6, from: 'by hand: 10 × 0.5' },
  ],
});
