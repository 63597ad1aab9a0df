import { cableMass as halfOfFreeLength } from '../../core/mass/added-parts';
import { defineFunction } from '../define';

export const cableMass = defineFunction({
  name: 'CABLE.MASS',
  family: 'mass loading',
  summary: 'Effective mass of a cable at the sensor.',
  equation: 'm_c = l·m′/2',
  args: {
    freeLength: { unit: 'mm', symbol: 'l', text: 'Free length from the sensor to the first tie.', atLeast: 0 },
    massPerLength: { unit: 'gram/m', symbol: 'm′', text: 'Mass of the cable per length.', above: 0 },
  },
  result: { unit: 'gram', symbol: 'm_c', text: 'Effective mass.' },
  validity:
    'Half of the free length is common practice. A three-axis unit has one thicker cable: take its own mass per length, not three times a single one.',
  source: { kind: 'practice', note: 'common practice, no source' },

  compute: ({ freeLength, massPerLength }) => halfOfFreeLength(freeLength, massPerLength),

  examples: [
    { args: [200, 5], result: 0.5, within: 1e-12, from: 'by hand: 0.2 m × 5 gram/m / 2' },
    { args: ['0.1 m', 1.2], result: 0.06, within: 1e-12, from: 'by hand: 0.1 × 1.2 / 2' },
  ],
});
