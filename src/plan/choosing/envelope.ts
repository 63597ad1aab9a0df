import type { Channel, Input } from '../model';
import type { Limits } from '../limits';
import type { Envelope } from './envelope-bound';

export interface EnvelopeOptions {
  /** Directions measured at the point by one housing; one unless said otherwise. */
  readonly axes?: number;
}

/**
 * What a sensor must satisfy at a channel, in SI, each bound with what causes it. With an actual sensor: its value and
 * what it has to spare. `inputs` are those at hand; absent: the channel's own. Pure inverses of the checks.
 */
export declare const envelopeOf: (
  channel: Channel,
  limits: Limits,
  inputs?: readonly Input[],
  options?: EnvelopeOptions,
) => Envelope;
