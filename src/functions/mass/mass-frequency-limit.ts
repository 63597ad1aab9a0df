import { frequencyForRatio } from '../../core/mass/local-mass';
import { defineFunction } from '../define';

export const massFrequencyLimit = defineFunction({
  name: 'MASS.FREQUENCY.LIMIT',
  family: 'mass loading',
  summary: 'Frequency up to which an added mass keeps a mass-loading ratio on a large plate.',
  equation: 'f = r·Z/(2πm)',
  args: {
    impedance: { unit: 'N·s/m', symbol: 'Z', text: 'Point impedance of the plate.', above: 0 },
    addedMass: { unit: 'gram', symbol: 'm', text: 'Sensor, mount and cable together.', above: 0 },
    ratioLimit: { unit: '1', symbol: 'r', text: 'Largest mass-loading ratio accepted.', above: 0 },
  },
  result: { unit: 'Hz', symbol: 'f', text: 'Highest frequency.' },
  validity: 'An impedance that does not change with frequency, as that of a plate.',
  source: { kind: 'derivation', from: 'r = m/m_eff with m_eff = Z/(2πf), solved for f' },

  compute: ({ impedance, addedMass, ratioLimit }) => frequencyForRatio(impedance, addedMass, ratioLimit),

  examples: [
    { args: [33.633, 1, 0.1], result: 535.286, within: 1e-6, from: 'by hand: 3.3633 / 0.00628319' },
    {
      args: [33.633, 1, 1],
      result: 5352.86,
      within: 1e-6,
      from: 'by hand: ten times the first; here the level is down by 3 dB',
    },
  ],
});
