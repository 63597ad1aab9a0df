import { defineFunction } from '../define';
import { allowedCorner, LOW_END } from './allowed-corner';

export const cornerAllowed = defineFunction({
  name: 'CORNER.ALLOWED',
  family: 'frequency span',
  summary: 'Largest corner of a further high-pass pole that keeps loss and phase at the lower band edge.',
  equation: 'f_c = f₁·√(1/((1−δ)²·Π(1+(f_i/f₁)²)) − 1), with a phase also ≤ f₁·tan(φ − Σ atan(f_i/f₁))',
  args: LOW_END,
  result: { unit: 'Hz', symbol: 'f_c', text: 'Corner frequency (−3 dB).' },
  validity:
    'First-order poles. Frequency response functions usually want a phase lead of 5° or less (common practice).',
  source: { kind: 'derivation', from: 'product of high-pass poles solved for one of them; phases add' },

  compute: (lowEnd) => allowedCorner(lowEnd),

  examples: [
    { args: [5], result: 1.643421, within: 1e-6, from: 'by hand: 5 × √(1/0.9025 − 1)' },
    { args: [5, 5, 5], result: 0.4374433, within: 1e-6, from: 'by hand: 5 × tan 5° is the smaller' },
    {
      args: [4.358899, 5, null, 1],
      result: 1,
      within: 1e-6,
      from: 'by hand: two equal poles lose 5 % together at √19 corners, 1 + 1/19 = 1/0.95',
    },
  ],
});
