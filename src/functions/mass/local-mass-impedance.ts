import { localMassOfImpedance } from '../../core/mass/local-mass';
import { defineFunction } from '../define';

export const localMassImpedance = defineFunction({
  name: 'LOCAL.MASS.IMPEDANCE',
  family: 'mass loading',
  summary: 'Local effective mass at a frequency from a known point impedance.',
  equation: 'm_eff = |Z|/(2πf)',
  args: {
    impedance: {
      unit: 'N·s/m',
      symbol: '|Z|',
      text: 'Driving-point impedance, force over velocity, at that frequency.',
      above: 0,
    },
    frequency: { unit: 'Hz', symbol: 'f', text: 'Highest frequency of interest.', above: 0 },
  },
  result: { unit: 'gram', symbol: 'm_eff', text: 'Modulus of the local effective mass.' },
  validity: 'Any linear structure; the modulus alone says nothing about the phase of the loading.',
  source: { kind: 'derivation', from: 'Z = F/v and v = a/(jω), so |F/a| = |Z|/ω' },

  compute: ({ impedance, frequency }) => localMassOfImpedance(impedance, frequency),

  examples: [
    { args: [260, 2000], result: 20.6901, within: 1e-5, from: 'by hand: 260 / 12566.37 = 0.0206901 kg' },
    {
      args: [260, '0.5 kHz'],
      result: 82.7606,
      within: 1e-5,
      from: 'by hand: a quarter of the frequency, four times 20.69014',
    },
  ],
});
