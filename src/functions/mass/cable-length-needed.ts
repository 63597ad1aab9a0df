import { cableLengthForShift } from '../../core/mass/added-parts';
import { defineFunction } from '../define';

export const cableLengthNeeded = defineFunction({
  name: 'CABLE.LENGTH.NEEDED',
  family: 'mass loading',
  summary: 'Shortest free length of a cable that keeps its effect on a natural frequency.',
  equation: 'l = (3EI/(2·s·m_eff·(2πf)²))^⅓',
  args: {
    bendingStiffness: { unit: 'N·m²', symbol: 'EI', text: 'Bending stiffness of the cable.', above: 0 },
    localMass: { unit: 'gram', symbol: 'm_eff', text: 'Local mass of the mode at the point.', above: 0 },
    frequency: { unit: 'Hz', symbol: 'f', text: 'Natural frequency.', above: 0 },
    shiftLimit: { unit: '%', symbol: 's', text: 'Largest rise of the frequency accepted.', above: 0, atMost: 10 },
  },
  result: { unit: 'mm', symbol: 'l', text: 'Free length to the first tie.' },
  validity: 'As CABLE.STIFFNESS and CABLE.SHIFT, whose inverse it is.',
  source: { kind: 'derivation', from: 'k_c = 3EI/l³ put into Δf/f = k_c/(2·m_eff·ω²), solved for l' },

  compute: ({ bendingStiffness, localMass, frequency, shiftLimit }) =>
    cableLengthForShift(bendingStiffness, localMass, frequency, shiftLimit),

  examples: [
    {
      args: [2e-5, 10, 50, 0.024317084],
      result: 50,
      within: 1e-6,
      from: 'by hand, backwards: 50 mm make 0.48 N/m and 0.0243171 %',
    },
    {
      args: [2e-5, 10, 50, 0.194536672],
      result: 25,
      within: 1e-6,
      from: 'by hand: eight times the shift, half the length',
    },
  ],
});
