import { allowedCount } from '../../core/mass/several-sensors';
import { defineFunction } from '../define';

export const massCountAllowed = defineFunction({
  name: 'MASS.COUNT.ALLOWED',
  family: 'mass loading',
  summary: 'How many units, spread evenly, a beam or panel takes within a mass-loading ratio.',
  equation: 'N = ⌊r·M/m⌋',
  args: {
    memberMass: { unit: 'gram', symbol: 'M', text: 'Mass of the whole beam or panel.', above: 0 },
    ratioLimit: { unit: '1', symbol: 'r', text: 'Largest summed mass-loading ratio.', above: 0 },
    unitMass: { unit: 'gram', symbol: 'm', text: 'Sensor, mount and cable of one unit together.', above: 0 },
  },
  result: { unit: '1', symbol: 'N', text: 'Number of units.' },
  validity: 'Simply supported beam or plate, evenly spread units; the mean of φ² is M_r/M there.',
  source: { kind: 'derivation', from: 'Σ m·φ² over evenly spread points → N·m·mean(φ²) = N·m·M_r/M, so r = N·m/M' },

  compute: ({ memberMass, ratioLimit, unitMass }) => allowedCount(memberMass, ratioLimit, unitMass),

  examples: [
    { args: [800, 0.045, 3], result: 12, within: 0, from: 'by hand: 36 / 3' },
    { args: [800, 0.1, 4.1], result: 19, within: 0, from: 'by hand: 80 / 4.1 = 19.5, rounded down' },
  ],
});
