import { cornerFromTimeConstant } from '../../core/frequency/corner';
import { mapped } from '../../core/issue';
import { defineFunction } from '../define';
import { allowedCorner, LOW_END } from './allowed-corner';

export const timeConstantNeeded = defineFunction({
  name: 'TIME.CONSTANT.NEEDED',
  family: 'frequency span',
  summary: 'Smallest time constant of a further high-pass pole that keeps loss and phase at the lower band edge.',
  equation: 'τ = 1/(2π·f_c), f_c of CORNER.ALLOWED',
  args: LOW_END,
  result: { unit: 's', symbol: 'τ', text: 'Discharge time constant.' },
  validity: 'As CORNER.ALLOWED.',
  source: { kind: 'derivation', from: 'CORNER.ALLOWED with f_c = 1/(2πτ)' },

  compute: (lowEnd) => mapped(allowedCorner(lowEnd), cornerFromTimeConstant),

  examples: [
    { args: [0.5], result: 0.9684371, within: 1e-6, from: 'by hand: 3.042435/(2π × 0.5)' },
    { args: [5, 5, 5], result: 0.3638299, within: 1e-6, from: 'by hand: 1/(2π × 5 × tan 5°)' },
  ],
});
