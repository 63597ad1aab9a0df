import { rigidLocalMass } from '../../core/mass/local-mass';
import { defineFunction } from '../define';

export const localMassRigid = defineFunction({
  name: 'LOCAL.MASS.RIGID',
  family: 'mass loading',
  summary: 'Local effective mass of a free rigid part at a point off its centre of mass.',
  equation: 'm_eff = 1/(1/M + d²/J)',
  args: {
    mass: { unit: 'gram', symbol: 'M', text: 'Mass of the part.', above: 0 },
    inertia: {
      unit: 'kg·m²',
      symbol: 'J',
      text: 'Moment of inertia about the centre of mass, for the tilt that the sensor’s axis causes.',
      above: 0,
    },
    offset: { unit: 'mm', symbol: 'd', text: 'Distance of the sensor’s axis from the centre of mass.', atLeast: 0 },
  },
  result: { unit: 'gram', symbol: 'm_eff', text: 'Local effective mass.' },
  validity: 'Softly suspended part below its first bending mode.',
  source: { kind: 'derivation', from: 'a = F/M + (F·d/J)·d at the point, by Newton and Euler' },

  compute: ({ mass, inertia, offset }) => rigidLocalMass(mass, inertia, offset),

  examples: [
    { args: [60, 2.4e-5, 20], result: 30, within: 1e-12, from: 'by hand: 1/0.06 + 0.0004/0.000024 = 16.667 + 16.667' },
    {
      args: [60, 2.4e-5, 0],
      result: 60,
      within: 1e-12,
      from: 'by definition: on the centre line the whole mass moves',
    },
  ],
});
