import { failure } from '../../core/issue';
import { summedMassRatio } from '../../core/mass/several-sensors';
import { defineFunction } from '../define';

export const massSum = defineFunction({
  name: 'MASS.SUM',
  family: 'mass loading',
  summary: 'Mass-loading ratio of several units on one panel, beam or point.',
  equation: 'r = Σ m_i·φ_i² / M_r',
  args: {
    masses: { kind: 'list', unit: 'gram', text: 'Sensor, mount and cable of each unit together.', atLeast: 0 },
    modalMass: {
      unit: 'gram',
      symbol: 'M_r',
      text: 'Modal mass of the panel, or the local mass when all units sit at one point.',
      above: 0,
    },
    shapes: {
      kind: 'list',
      unit: '1',
      text: 'Mode shape at each unit, in the scaling of the modal mass; blank: all 1.',
      optional: true,
    },
  },
  result: { unit: '1', symbol: 'r', text: 'Summed mass-loading ratio.' },
  validity:
    'One mode whose shape the units do not change. Spread evenly over a simply supported beam or plate: about the total over the member’s mass.',
  source: { kind: 'derivation', from: 'kinetic energy of the units ½Σ m_i·φ_i²·q̇² beside that of the mode ½M_r·q̇²' },

  compute: ({ masses, modalMass, shapes }) =>
    shapes && shapes.length !== masses.length
      ? failure({
          code: 'wrong-size',
          arg: 'shapes',
          given: `${shapes.length} shapes`,
          rule: `one for each of the ${masses.length} masses`,
        })
      : summedMassRatio(masses, modalMass, shapes),

  examples: [
    {
      args: ['5.6; 1.2', 20.69],
      result: 0.328661,
      within: 1e-5,
      from: 'by hand: a split pair at one point, 6.8 / 20.69',
    },
    {
      args: [[[3, 3, 3]], 90, [[1, 0.5, 0]]],
      result: 0.0416667,
      within: 1e-6,
      from: 'by hand: 3 × (1 + 0.25 + 0) / 90',
    },
  ],
});
