import { HOLDING_RESERVE, peakForHolding } from '../../core/mass/holding';
import { defineFunction } from '../define';

export const mountLevelAllowed = defineFunction({
  name: 'MOUNT.LEVEL.ALLOWED',
  family: 'mass loading',
  summary: 'Highest level that a mount holds with a reserve.',
  equation: 'a = F_hold/(n·m)',
  args: {
    holdingForce: { unit: 'N', symbol: 'F_hold', text: 'Force at which the joint lets go.', above: 0 },
    addedMass: { unit: 'gram', symbol: 'm', text: 'Sensor with everything that hangs on the joint.', above: 0 },
    reserve: {
      unit: '1',
      symbol: 'n',
      text: 'Holding force over inertia force.',
      atLeast: 1,
      default: HOLDING_RESERVE,
    },
  },
  result: { unit: 'g', symbol: 'a', text: 'Highest peak of the whole acceleration.' },
  validity: 'As MOUNT.MARGIN, whose inverse it is. The default reserve of 3 is common practice.',
  source: { kind: 'practice', note: 'common practice, no source' },

  compute: ({ holdingForce, addedMass, reserve }) => peakForHolding(holdingForce, addedMass, reserve),

  examples: [
    {
      args: [9.80665, 10],
      result: 33.3333,
      within: 1e-5,
      from: 'by hand: holds 1 kg at 1 g, so 10 gram at 100 g, a third of it',
    },
    { args: [9.80665, 10, 1], result: 100, within: 1e-9, from: 'by hand: without reserve' },
  ],
});
