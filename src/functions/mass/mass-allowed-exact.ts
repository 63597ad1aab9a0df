import { massForLevelTolerance } from '../../core/mass/modification';
import { fromPolar } from '../../core/mass/complex';
import { defineFunction } from '../define';

export const massAllowedExact = defineFunction({
  name: 'MASS.ALLOWED.EXACT',
  family: 'mass loading',
  summary: 'Heaviest sensor that keeps the level within a tolerance, from the complex local mass.',
  equation: 'largest m_s with | 1/|1 + (m/m_eff)·e^{−jθ}| − 1 | ≤ tol for every smaller m',
  args: {
    localMass: { unit: 'gram', symbol: 'm_eff', text: 'Modulus of the local effective mass.', above: 0 },
    localPhase: {
      unit: 'deg',
      symbol: 'θ',
      text: 'Its phase: 0 mass-like, 90 damper-like, 180 spring-like.',
      atLeast: -180,
      atMost: 180,
    },
    tolerance: { unit: '%', symbol: 'tol', text: 'Largest change of the level either way.', above: 0, below: 100 },
    mountMass: { unit: 'gram', symbol: 'm_m', text: 'Mount hardware and adhesive.', atLeast: 0 },
    cableMass: { unit: 'gram', symbol: 'm_c', text: 'Effective mass of the cable.', atLeast: 0 },
  },
  result: { unit: 'gram', symbol: 'm_s', text: 'Allowed sensor mass. Negative: measure without contact or elsewhere.' },
  validity: 'As MASS.LEVEL.EXACT, whose inverse it is, at one frequency: evaluate it over the band.',
  source: { kind: 'derivation', from: '|1 + m/m_eff|² = 1 + 2m·cos θ/|m_eff| + m²/|m_eff|² set to 1/(1 ± tol)²' },

  compute: ({ localMass, localPhase, tolerance, mountMass, cableMass }) =>
    massForLevelTolerance(fromPolar(1 / localMass, -localPhase), tolerance) - mountMass - cableMass,

  examples: [
    { args: [20, 0, 20, 0, 0], result: 5, within: 1e-9, from: 'by hand: 1/0.8 − 1 = 0.25' },
    {
      args: [20, 150, 10, 0.3, 0.5],
      result: 1.3356962,
      within: 1e-6,
      from: 'by scipy brentq: 2.1356962 gram raise the level by 10 %, less 0.8',
    },
    { args: [20, 60, 10, 0, 0], result: 3.9221823, within: 1e-6, from: 'by scipy brentq on 1/|1 + x·e^{−jπ/3}| = 0.9' },
  ],
});
