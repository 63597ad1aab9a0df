import { inertiaForce } from '../../core/mass/holding';
import { defineFunction } from '../define';

export const mountForce = defineFunction({
  name: 'MOUNT.FORCE',
  family: 'mass loading',
  summary: 'Inertia force that a mount must hold.',
  equation: 'F = m·√(a² + a_t²)',
  args: {
    addedMass: { unit: 'gram', symbol: 'm', text: 'Sensor with everything that hangs on the joint.', atLeast: 0 },
    levelHigh: { unit: 'g', symbol: 'a', statistic: 'peak', text: 'Highest peak along the axis.', atLeast: 0 },
    transverseHigh: {
      unit: 'g',
      symbol: 'a_t',
      statistic: 'peak',
      text: 'Highest peak across the axis.',
      atLeast: 0,
      default: 0,
    },
  },
  result: { unit: 'N', symbol: 'F', text: 'Force on the joint.' },
  validity:
    'Below the mounted resonance. A unit that comes off is a thrown part, and a lost control sensor drives a shaker to full power: tether it, set drive limits, follow local rules.',
  source: { kind: 'derivation', from: 'F = m·a, both directions at once as the root of the squares' },

  compute: ({ addedMass, levelHigh, transverseHigh }) => inertiaForce(addedMass, levelHigh, transverseHigh),

  examples: [
    { args: [5.6, 65], result: 3.56962, within: 1e-6, from: 'by hand: 0.0056 × 637.432' },
    { args: [10, '3 g', '4 g'], result: 0.4903325, within: 1e-6, from: 'by hand: 3 and 4 g make 5 g, 0.01 × 49.03325' },
  ],
});
