import { frequencyOverCorner } from '../../core/frequency/corner';
import { defineFunction } from '../define';

export const limitFromCorner = defineFunction({
  name: 'LIMIT.FROM.CORNER',
  family: 'frequency span',
  summary: 'Lower limit at a stated loss of one high-pass pole.',
  equation: 'f_l = f_c/√(1/(1−δ)² − 1)',
  args: {
    corner: { unit: 'Hz', symbol: 'f_c', text: 'Corner (−3 dB).', above: 0 },
    loss: { unit: '%', symbol: 'δ', text: 'Loss meant by the limit.', above: 0, below: 100, default: 5 },
  },
  result: { unit: 'Hz', symbol: 'f_l', text: 'Frequency at which the pole loses δ.' },
  validity: 'As CORNER.FROM.LIMIT, whose inverse it is.',
  source: { kind: 'derivation', from: 'one high-pass pole, |H| = 1/√(1+(f_c/f)²)' },

  compute: ({ corner, loss }) => corner * frequencyOverCorner(loss),

  examples: [
    { args: [1], result: 3.042435, within: 1e-6, from: 'by hand: 0.95/√(1 − 0.9025)' },
    { args: [0.5, 10], result: 1.032371, within: 1e-6, from: 'by hand: 0.5 × 0.9/√0.19' },
  ],
});
