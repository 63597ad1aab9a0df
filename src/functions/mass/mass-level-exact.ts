import { exactLevelEffect } from '../../core/mass/modification';
import { fromPolar } from '../../core/mass/complex';
import { defineFunction } from '../define';

export const massLevelExact = defineFunction({
  name: 'MASS.LEVEL.EXACT',
  family: 'mass loading',
  summary: 'Exact change of the level at one frequency from the complex local mass.',
  equation: 'a′/a = 1/|1 + (m/m_eff)·e^{−jθ}|',
  args: {
    addedMass: { unit: 'gram', symbol: 'm', text: 'Sensor, mount and cable together.', atLeast: 0 },
    localMass: { unit: 'gram', symbol: 'm_eff', text: 'Modulus of the local effective mass.', above: 0 },
    localPhase: {
      unit: 'deg',
      symbol: 'θ',
      text: 'Its phase: 0 mass-like, 90 damper-like, 180 spring-like.',
      atLeast: -180,
      atMost: 180,
    },
  },
  result: { unit: '%', text: 'Change of the level; positive where the unit brings a resonance nearer.' },
  validity:
    'Linear structure driven by forces, rigid unit on one point. The sign is not fixed: below a resonance the level rises.',
  source: { kind: 'derivation', from: 'a′ = A·(F − m·a′) with A = 1/m_eff' },

  compute: ({ addedMass, localMass, localPhase }) => exactLevelEffect(fromPolar(1 / localMass, -localPhase), addedMass),

  examples: [
    { args: [5, 20, 0], result: -20, within: 1e-12, from: 'by hand: 1/1.25' },
    { args: [4, 20, 180], result: 25, within: 1e-9, from: 'by hand: 1/0.8, a rise' },
    { args: [2, 20, 60], result: -5.0842, within: 1e-5, from: 'by numpy: 1/|1 + 0.1·e^{−jπ/3}|' },
  ],
});
