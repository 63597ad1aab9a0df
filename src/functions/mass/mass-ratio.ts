import { massRatio as ratioOf, totalAddedMass } from '../../core/mass/loading';
import { defineFunction } from '../define';

export const massRatio = defineFunction({
  name: 'MASS.RATIO',
  family: 'mass loading',
  summary: 'Mass-loading ratio: everything added at the point over the local effective mass there.',
  equation: 'r = (m_s + m_m + m_c) / m_eff',
  args: {
    sensorMass: { unit: 'gram', symbol: 'm_s', text: 'Mass of the sensor.', atLeast: 0 },
    mountMass: { unit: 'gram', symbol: 'm_m', text: 'Mount hardware and adhesive.', atLeast: 0 },
    cableMass: { unit: 'gram', symbol: 'm_c', text: 'Effective mass of the cable.', atLeast: 0 },
    localMass: {
      unit: 'gram',
      symbol: 'm_eff',
      text: 'Local effective mass at the point, in its direction, at the highest frequency of interest.',
      above: 0,
    },
  },
  result: { unit: '1', symbol: 'r', text: 'Added mass over local mass.' },
  validity: 'Rigid sensor on a structure driven by forces. Not the mass of the whole structure: the local one.',
  source: { kind: 'derivation', from: 'F = m·a at the point: the free effective mass F/a of the structure grows by m' },

  compute: ({ sensorMass, mountMass, cableMass, localMass }) =>
    ratioOf(totalAddedMass(sensorMass, mountMass, cableMass), localMass),

  examples: [
    { args: [4.8, 0.3, 0.5, 56], result: 0.1, within: 1e-12, from: 'by hand: 5.6 / 56' },
    { args: ['0.2 gram', 0.1, 0.1, '0.02 kg'], result: 0.02, within: 1e-12, from: 'by hand, in kg: 0.0004 / 0.02' },
  ],
});
