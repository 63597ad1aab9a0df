import { cornerFromLimit as cornerOfLimit } from '../../core/frequency/corner';
import { defineFunction } from '../define';

export const cornerFromLimit = defineFunction({
  name: 'CORNER.FROM.LIMIT',
  family: 'frequency span',
  summary: 'Corner (−3 dB) of a lower limit that a data sheet states with its loss.',
  equation: 'f_c = f_l·√(1/(1−δ)² − 1)',
  args: {
    lowLimit: { unit: 'Hz', symbol: 'f_l', text: 'Lower limit by the data sheet.', above: 0 },
    loss: { unit: '%', symbol: 'δ', text: 'Loss meant by the limit.', above: 0, below: 100, default: 5 },
  },
  result: { unit: 'Hz', symbol: 'f_c', text: 'Corner frequency.' },
  validity:
    'First-order low end. Ask which loss a printed limit means; 5 % is the default (common practice, no source).',
  source: { kind: 'derivation', from: 'one high-pass pole, |H| = 1/√(1+(f_c/f)²)' },

  compute: ({ lowLimit, loss }) => cornerOfLimit(lowLimit, loss),

  examples: [
    { args: [0.5], result: 0.1643421, within: 1e-6, from: 'by hand: √(1/0.9025 − 1) = 0.3286841; × 0.5' },
    { args: [1, 29.2893219], result: 1, within: 1e-6, from: 'by hand: −3 dB is the corner itself, 1 − 1/√2' },
    { args: [2, 10], result: 0.9686442, within: 1e-6, from: 'by hand: √(1/0.81 − 1) × 2' },
  ],
});
