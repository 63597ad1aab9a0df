import { cornerFromTimeConstant } from '../../core/frequency/corner';
import { defineFunction } from '../define';

export const cornerFromTime = defineFunction({
  name: 'CORNER.FROM.TIME',
  family: 'frequency span',
  summary: 'Corner of a discharge time constant.',
  equation: 'f_c = 1/(2πτ)',
  args: {
    timeConstant: { unit: 's', symbol: 'τ', text: 'Discharge time constant.', above: 0 },
  },
  result: { unit: 'Hz', symbol: 'f_c', text: 'Corner frequency.' },
  validity: 'First-order discharge.',
  source: { kind: 'derivation', from: '|H| of τ·y′ + y = τ·x′ is 1/√2 at 2πf·τ = 1' },

  compute: ({ timeConstant }) => cornerFromTimeConstant(timeConstant),

  examples: [
    { args: [0.5], result: 0.3183099, within: 1e-6, from: 'by hand: 1/π' },
    { args: [10], result: 0.01591549, within: 1e-6, from: 'by hand: 1/62.831853' },
  ],
});
