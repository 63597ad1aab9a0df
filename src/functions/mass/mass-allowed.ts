import { allowedSensorMass } from '../../core/mass/loading';
import { defineFunction } from '../define';

export const massAllowed = defineFunction({
  name: 'MASS.ALLOWED',
  family: 'mass loading',
  summary: 'Heaviest sensor that keeps a mass-loading ratio; negative when no contact sensor fits.',
  equation: 'm_s = r·m_eff − m_m − m_c',
  args: {
    localMass: { unit: 'gram', symbol: 'm_eff', text: 'Local effective mass at the point.', above: 0 },
    ratioLimit: { unit: '1', symbol: 'r', text: 'Largest mass-loading ratio accepted.', above: 0 },
    mountMass: { unit: 'gram', symbol: 'm_m', text: 'Mount hardware and adhesive.', atLeast: 0 },
    cableMass: { unit: 'gram', symbol: 'm_c', text: 'Effective mass of the cable.', atLeast: 0 },
  },
  result: { unit: 'gram', symbol: 'm_s', text: 'Allowed sensor mass. Negative: measure without contact or elsewhere.' },
  validity: 'As MASS.RATIO, whose inverse it is.',
  source: { kind: 'derivation', from: 'r = (m_s + m_m + m_c)/m_eff solved for m_s' },

  compute: ({ localMass, ratioLimit, mountMass, cableMass }) =>
    allowedSensorMass(localMass, ratioLimit, mountMass, cableMass),

  examples: [
    { args: [20.69, 0.1, 0.3, 0.5], result: 1.269, within: 1e-9, from: 'by hand: 2.069 − 0.8' },
    {
      args: [2, 0.1, 0.1, 0.15],
      result: -0.05,
      within: 1e-9,
      from: 'by hand: 0.2 − 0.25; the cable alone is too heavy',
    },
  ],
});
