import { allowedSensorMass } from '../../core/mass/loading';
import { defineFunction } from '../define';

export const massSplit = defineFunction({
  name: 'MASS.SPLIT',
  family: 'mass loading',
  summary: 'Heaviest second sensor of a low-and-high pair at one point; negative when it does not fit.',
  equation: 'm_s2 = r·m_eff − m_1 − m_m − m_c',
  args: {
    localMass: { unit: 'gram', symbol: 'm_eff', text: 'Local effective mass at the higher of both bands.', above: 0 },
    ratioLimit: { unit: '1', symbol: 'r', text: 'Largest mass-loading ratio accepted.', above: 0 },
    firstTotal: { unit: 'gram', symbol: 'm_1', text: 'First sensor with its mount and cable.', atLeast: 0 },
    mountMass: { unit: 'gram', symbol: 'm_m', text: 'Mount of the second sensor.', atLeast: 0 },
    cableMass: { unit: 'gram', symbol: 'm_c', text: 'Effective cable mass of the second sensor.', atLeast: 0 },
  },
  result: { unit: 'gram', symbol: 'm_s2', text: 'Allowed mass of the second sensor.' },
  validity: 'Both sensors load both measurements: the structure carries the sum at every frequency.',
  source: { kind: 'derivation', from: 'r = (m_1 + m_s2 + m_m + m_c)/m_eff solved for m_s2' },

  compute: ({ localMass, ratioLimit, firstTotal, mountMass, cableMass }) =>
    allowedSensorMass(localMass, ratioLimit, mountMass, cableMass) - firstTotal,

  examples: [
    {
      args: [20.69, 0.1, 5.6, 0.1, 0.3],
      result: -3.931,
      within: 1e-9,
      from: 'by hand: 2.069 − 6.0; the pair does not fit',
    },
    { args: [82.76, 0.1, 5.6, 0.1, 0.3], result: 2.276, within: 1e-9, from: 'by hand: 8.276 − 6.0' },
  ],
});
