import { cornerFromTimeConstant } from '../../core/frequency/corner';
import { defineFunction } from '../define';

export const timeConstant = defineFunction({
  name: 'TIME.CONSTANT',
  family: 'frequency span',
  summary: 'Discharge time constant of a corner.',
  equation: 'τ = 1/(2π·f_c)',
  args: {
    corner: { unit: 'Hz', symbol: 'f_c', text: 'Corner (−3 dB).', above: 0 },
  },
  result: { unit: 's', symbol: 'τ', text: 'Discharge time constant.' },
  validity: 'First-order discharge.',
  source: { kind: 'derivation', from: '|H| of τ·y′ + y = τ·x′ is 1/√2 at 2πf·τ = 1' },

  compute: ({ corner }) => cornerFromTimeConstant(corner),

  examples: [
    {
      args: [0.1643420525894316],
      result: 0.9684371,
      within: 1e-6,
      from: 'by hand: 1/(6.2831853 × 0.1643421), the pole of a −5 % limit at 0.5 Hz',
    },
    { args: [1], result: 0.1591549, within: 1e-6, from: 'by hand: 1/6.2831853' },
  ],
});
