import { cableLengthForMass } from '../../core/mass/added-parts';
import { defineFunction } from '../define';

export const cableLengthAllowed = defineFunction({
  name: 'CABLE.LENGTH.ALLOWED',
  family: 'mass loading',
  summary: 'Longest free length of a cable that keeps its effective mass.',
  equation: 'l = 2m_c/m′',
  args: {
    cableMass: { unit: 'gram', symbol: 'm_c', text: 'Effective mass that may be used.', atLeast: 0 },
    massPerLength: { unit: 'gram/m', symbol: 'm′', text: 'Mass of the cable per length.', above: 0 },
  },
  result: { unit: 'mm', symbol: 'l', text: 'Free length to the first tie.' },
  validity: 'As CABLE.MASS, whose inverse it is; CABLE.LENGTH.NEEDED bounds it from below.',
  source: { kind: 'practice', note: 'common practice, no source' },

  compute: ({ cableMass, massPerLength }) => cableLengthForMass(cableMass, massPerLength),

  examples: [
    { args: [0.5, 5], result: 200, within: 1e-12, from: 'by hand: 1 gram / 5 gram/m' },
    { args: [0.06, 1.2], result: 100, within: 1e-12, from: 'by hand: 0.12 / 1.2 m' },
  ],
});
