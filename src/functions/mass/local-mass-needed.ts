import { neededLocalMass, totalAddedMass } from '../../core/mass/loading';
import { defineFunction } from '../define';

export const localMassNeeded = defineFunction({
  name: 'LOCAL.MASS.NEEDED',
  family: 'mass loading',
  summary: 'Smallest local mass that takes a sensor within a mass-loading ratio.',
  equation: 'm_eff = (m_s + m_m + m_c) / r',
  args: {
    sensorMass: { unit: 'gram', symbol: 'm_s', text: 'Mass of the sensor.', atLeast: 0 },
    mountMass: { unit: 'gram', symbol: 'm_m', text: 'Mount hardware and adhesive.', atLeast: 0 },
    cableMass: { unit: 'gram', symbol: 'm_c', text: 'Effective mass of the cable.', atLeast: 0 },
    ratioLimit: { unit: '1', symbol: 'r', text: 'Largest mass-loading ratio accepted.', above: 0 },
  },
  result: { unit: 'gram', symbol: 'm_eff', text: 'Smallest local effective mass.' },
  validity: 'As MASS.RATIO: look for a point at least this heavy, nearer to a node, a frame or a stiffener.',
  source: { kind: 'derivation', from: 'r = (m_s + m_m + m_c)/m_eff solved for m_eff' },

  compute: ({ sensorMass, mountMass, cableMass, ratioLimit }) =>
    neededLocalMass(totalAddedMass(sensorMass, mountMass, cableMass), ratioLimit),

  examples: [
    { args: [4.8, 0.3, 0.5, 0.1], result: 56, within: 1e-12, from: 'by hand: 5.6 / 0.1' },
    { args: [0.2, 0.05, 0.15, 0.02], result: 20, within: 1e-12, from: 'by hand: 0.4 / 0.02' },
  ],
});
