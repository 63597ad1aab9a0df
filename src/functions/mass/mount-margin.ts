import { defineFunction } from '../define';

export const mountMargin = defineFunction({
  name: 'MOUNT.MARGIN',
  family: 'mass loading',
  summary: 'How many times the force a mount holds.',
  equation: 'n = F_hold/F',
  args: {
    holdingForce: { unit: 'N', symbol: 'F_hold', text: 'Force at which the joint lets go.', above: 0 },
    force: { unit: 'N', symbol: 'F', text: 'Inertia force on the joint.', above: 0 },
  },
  result: { unit: '1', symbol: 'n', text: 'Holding force over inertia force.' },
  validity:
    'Common practice: at least 3. Heat, creep and dirt lower the holding force. On shakers, at height and on machines tether the unit; the margin is no protection of people.',
  source: { kind: 'practice', note: 'common practice, no source' },

  compute: ({ holdingForce, force }) => holdingForce / force,

  examples: [
    { args: [12, 3], result: 4, within: 1e-12, from: 'by hand: 12 / 3' },
    { args: [10, '4 N'], result: 2.5, within: 1e-12, from: 'by hand: 10 / 4; below the customary 3' },
  ],
});
