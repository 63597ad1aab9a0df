import { cableStiffness as ofFreeLength } from '../../core/mass/added-parts';
import { defineFunction } from '../define';

export const cableStiffness = defineFunction({
  name: 'CABLE.STIFFNESS',
  family: 'mass loading',
  summary: 'Stiffness that a free cable length adds at the sensor.',
  equation: 'k_c = 3EI/l³',
  args: {
    bendingStiffness: { unit: 'N·m²', symbol: 'EI', text: 'Bending stiffness of the cable.', above: 0 },
    freeLength: { unit: 'mm', symbol: 'l', text: 'Free length from the sensor to the first tie.', above: 0 },
  },
  result: { unit: 'N/m', symbol: 'k_c', text: 'Stiffness.' },
  validity:
    'Tie stiff, cable straight. Matters for films and parts below a gram; there the cable’s damping matters earlier.',
  source: { kind: 'derivation', from: 'tip stiffness of a cantilever, δ = F·l³/(3EI)' },

  compute: ({ bendingStiffness, freeLength }) => ofFreeLength(bendingStiffness, freeLength),

  examples: [
    { args: [2e-5, 50], result: 0.48, within: 1e-12, from: 'by hand: 6e-5 / 1.25e-4' },
    { args: [2e-5, 25], result: 3.84, within: 1e-12, from: 'by hand: half the length, eight times as stiff' },
  ],
});
