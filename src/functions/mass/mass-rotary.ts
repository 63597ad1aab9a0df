import { rotaryEffect } from '../../core/mass/added-parts';
import { defineFunction } from '../define';

export const massRotary = defineFunction({
  name: 'MASS.ROTARY',
  family: 'mass loading',
  summary: 'Rotary effect of a tall unit on bending waves, over its translational effect.',
  equation: '(2πh/λ_B)², h² = h_cg² + i²',
  args: {
    wavelength: {
      unit: 'mm',
      symbol: 'λ_B',
      text: 'Bending wavelength of the structure at the highest frequency.',
      above: 0,
    },
    centreHeight: { unit: 'mm', symbol: 'h_cg', text: 'Height of the centre of mass above the surface.', atLeast: 0 },
    gyrationRadius: {
      unit: 'mm',
      symbol: 'i',
      text: 'Radius of gyration about its own centre, √(J/m).',
      atLeast: 0,
      default: 0,
    },
  },
  result: { unit: '1', text: 'Rotary over translational effect.' },
  validity:
    'Common practice: warn from 0.1, do not use from 0.3. At a node of translation the slope is largest: the rotary part loads there all the same.',
  source: { kind: 'derivation', from: 'kinetic energies ½J·(k_B·v)² and ½m·v², J = m·(h_cg² + i²), k_B = 2π/λ_B' },

  compute: ({ wavelength, centreHeight, gyrationRadius }) =>
    rotaryEffect((2 * Math.PI) / wavelength, Math.hypot(centreHeight, gyrationRadius)),

  examples: [
    { args: [98.91, 10], result: 0.403533, within: 1e-5, from: 'by hand: (0.0628319/0.09891)²' },
    {
      args: [98.91, 4, 3],
      result: 0.100883,
      within: 1e-5,
      from: 'by hand: 4 and 3 mm make 5 mm, a quarter of the first',
    },
  ],
});
