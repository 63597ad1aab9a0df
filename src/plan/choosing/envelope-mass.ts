import { allowedSensorMass } from '../../core/mass/loading';
import type { Limits } from '../limits';
import { governingLocalMass } from '../local-mass';
import { missingField } from '../missing';
import type { Channel } from '../model';
import type { NumberBound } from './envelope-bound';
import { judged, lacking, limitOf } from './envelope-judge';

const LOCAL_MASS = missingField('channels', 'localMass');
const PURPOSE = missingField('channels', 'purpose');
const MOUNT = missingField('channels', 'mount');
const CABLE = missingField('channels', 'cable');
const MOUNT_MASS = missingField('mounts', 'mountMass');
const CABLE_MASS = missingField('cables', 'cableMass');
const SENSOR_MASS = missingField('sensors', 'mass');

/** Heaviest sensor; negative when mount and cable alone are too heavy. */
export const massBound = ({ requirement, sensor, mount, cable }: Channel, limits: Limits): NumberBound => {
  const local = governingLocalMass(requirement.localMass);
  const localMass = local?.complete ? local.mass : undefined;
  const purpose = requirement.purpose ?? (requirement.unread?.includes('purpose') ? undefined : limits.purpose);
  const limit = purpose && limits.massRatio[purpose];
  const allowed = (ratio: number | undefined): number | undefined =>
    localMass === undefined || mount?.mass === undefined || cable?.mass === undefined || ratio === undefined
      ? undefined
      : allowedSensorMass(localMass, ratio, mount.mass, cable.mass);
  return judged({
    key: 'sensor mass',
    unit: 'gram',
    direction: 'atMost',
    causes: [LOCAL_MASS, PURPOSE, MOUNT_MASS, CABLE_MASS],
    limit: limit && limitOf('massRatio', limit),
    pass: allowed(limit?.pass),
    warn: allowed(limit?.warn),
    missing: lacking(
      [localMass, LOCAL_MASS],
      [purpose, PURPOSE],
      [mount?.mass, mount ? MOUNT_MASS : MOUNT],
      [cable?.mass, cable ? CABLE_MASS : CABLE],
    ),
    value: sensor?.mass,
    valueMissing: sensor ? lacking([sensor.mass, SENSOR_MASS]) : [],
    isJudged: sensor !== undefined,
  });
};
