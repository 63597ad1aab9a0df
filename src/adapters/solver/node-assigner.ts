import { assignChannels } from '../../plan/assign/assign-channels';
import type { Assigner } from '../../plan/assign/assigner';
import { nodeSolver } from './node-solver';

/** On the calling thread: for the command and for tests. */
export const nodeAssigner: Assigner = (channels, stock, limits, options) =>
  assignChannels(channels, stock, limits, nodeSolver, options);
