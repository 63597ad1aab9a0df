import type { Channel } from '../model';
import type { Limits } from '../limits';
import type { Circumstances, TechnologyAdvice } from './technology-types';

/** Which sensing elements and outputs stay admissible, which fall, why, and what would bring them back. */
export declare const adviseTechnology: (
  channel: Channel,
  limits: Limits,
  circumstances?: Circumstances,
) => TechnologyAdvice;
