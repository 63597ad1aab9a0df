import { heightForRotaryEffect } from '../../core/mass/added-parts';
import { defineFunction } from '../define';

export const heightAllowed = defineFunction({
  name: 'HEIGHT.ALLOWED',
  family: 'mass loading',
  summary: 'Largest height of a unit’s centre of mass that keeps its rotary effect.',
  equation: 'h = λ_B·√q/2π',
  args: {
    wavelength: {
      unit: 'mm',
      symbol: 'λ_B',
      text: 'Bending wavelength of the structure at the highest frequency.',
      above: 0,
    },
    effectLimit: { unit: '1', symbol: 'q', text: 'Rotary effect accepted.', above: 0, default: 0.1 },
  },
  result: { unit: 'mm', symbol: 'h', text: 'Height above the surface, radius of gyration included.' },
  validity: 'As MASS.ROTARY, whose inverse it is. The default of 0.1 is common practice.',
  source: { kind: 'derivation', from: '(2πh/λ_B)² = q solved for h' },

  compute: ({ wavelength, effectLimit }) => heightForRotaryEffect(effectLimit, (2 * Math.PI) / wavelength),

  examples: [
    { args: [98.91145], result: 4.97814, within: 1e-5, from: 'by numpy: √0.1 × 98.91145/2π' },
    { args: [62.83185, 0.25], result: 5, within: 1e-6, from: 'by hand: half of λ/2π = 10 mm' },
  ],
});
