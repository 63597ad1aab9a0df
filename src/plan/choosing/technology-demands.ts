import { governingLocalMass } from '../local-mass';
import type { Limits } from '../limits';
import { missingField, type MissingField } from '../missing';
import type { Channel } from '../model';
import { envelopeOf } from './envelope';
import type { BoundKey, NumberBound } from './envelope-bound';
import type { Circumstances } from './technology-types';

/** What the technology steps need of a channel, taken from its envelope without any actual sensor. */
export interface Demands {
  readonly channel: Channel;
  readonly limits: Limits;
  readonly circumstances: Circumstances;
  readonly bound: (key: BoundKey) => NumberBound;
  /** kg: what is added besides the sensor, and what it is compared with. */
  readonly added?: number;
  readonly localMass?: number;
}

export const demandsOf = (channel: Channel, limits: Limits, circumstances: Circumstances): Demands => {
  const bare: Channel = { ...channel, sensor: undefined, input: undefined };
  const { bounds } = envelopeOf(bare, limits, []);
  const { mount, cable } = channel;
  const local = governingLocalMass(channel.requirement.localMass);
  return {
    channel,
    limits,
    circumstances,
    bound: (key) => bounds.find((b): b is NumberBound => b.kind === 'number' && b.key === key)!,
    added: mount?.mass === undefined || cable?.mass === undefined ? undefined : mount.mass + cable.mass,
    localMass: local?.complete ? local.mass : undefined,
  };
};

export const FIELD = {
  bandLow: missingField('channels', 'bandLow'),
  bandHigh: missingField('channels', 'bandHigh'),
  levelLow: missingField('channels', 'levelLow'),
  levelHigh: missingField('channels', 'levelHigh'),
  temperatureLow: missingField('channels', 'temperatureLow'),
  temperatureHigh: missingField('channels', 'temperatureHigh'),
  thermalTolerance: missingField('channels', 'thermalTolerance'),
  localMass: missingField('channels', 'localMass'),
  direction: missingField('channels', 'direction'),
  input: missingField('channels', 'input'),
  cableCapacitance: missingField('cables', 'cableCapacitance'),
} as const satisfies Record<string, MissingField>;
