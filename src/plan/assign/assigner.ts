import type { Stock } from '../choosing/candidate';
import type { Limits } from '../limits';
import type { Channel } from '../model';
import type { Assignment } from './assignment';
import type { AssignOptions } from './options';

/** `assignChannels` on this thread or in a worker. Rejects only when it cannot run. */
export type Assigner = (
  channels: readonly Channel[],
  stock: Stock,
  limits: Limits,
  options?: AssignOptions,
) => Promise<Assignment>;
