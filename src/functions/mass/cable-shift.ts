import { stiffnessShift } from '../../core/mass/added-parts';
import { defineFunction } from '../define';

export const cableShift = defineFunction({
  name: 'CABLE.SHIFT',
  family: 'mass loading',
  summary: 'Rise of a natural frequency by the stiffness of a cable.',
  equation: 'Δf/f = k_c/(2·m_eff·(2πf)²)',
  args: {
    cableStiffness: { unit: 'N/m', symbol: 'k_c', text: 'Stiffness of the cable.', atLeast: 0 },
    localMass: { unit: 'gram', symbol: 'm_eff', text: 'Local mass of the mode at the point.', above: 0 },
    frequency: { unit: 'Hz', symbol: 'f', text: 'Natural frequency.', above: 0 },
  },
  result: { unit: '%', symbol: 'Δf/f', text: 'Change of the frequency; positive.' },
  validity: 'Cable much softer than the mode.',
  source: { kind: 'derivation', from: 'ω² = (K + k_c)/m_eff, first order in k_c/K, with K = m_eff·ω²' },

  compute: ({ cableStiffness, localMass, frequency }) => stiffnessShift(cableStiffness, localMass, frequency),

  examples: [
    { args: [0.48, 10, 50], result: 0.0243171, within: 1e-5, from: 'by hand: 0.48 / (2 × 986.960)' },
    {
      args: [0.48, 0.1, 50],
      result: 2.43171,
      within: 1e-5,
      from: 'by hand: a hundredth of the mass, a hundred times the shift',
    },
  ],
});
