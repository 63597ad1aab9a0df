import { allowedSensorMass, frequencyShift, levelEffect, massRatio, totalAddedMass } from '../core/mass/loading';
import type { LoadingModel } from '../core/mass/loading';
import { verdictAtMost, type Verdict } from '../core/verdict';
import { PURPOSES } from './fields';
import type { Bound, Limits } from './limits';
import { governingLocalMass } from './local-mass';
import { Missing, missingField, type MissingField } from './missing';
import type { Cable, Channel, Mount, Requirement, SensorType } from './model';

export interface MassCheck {
  /** kg: sensor, mount and cable. */
  readonly total?: number;
  /** kg, of the governing branch. */
  readonly localMass?: number;
  readonly model?: LoadingModel;
  readonly ratio?: number;
  /** A lower bound of the ratio while a part of it is not known. */
  readonly ratioAtLeast?: number;
  readonly levelEffect?: number;
  /** rad; undefined for mass-like structures. */
  readonly phase?: number;
  /** Undefined for plates and beams. */
  readonly frequencyShift?: number;
  /** Heaviest sensor in kg for PASS; negative: no contact sensor fits. */
  readonly allowed?: number;
  readonly limit?: Bound;
  /** Force on the joint at the highest level against what it may carry, N. */
  readonly holding?: { readonly force: number; readonly allowed: number };
  readonly missing: readonly MissingField[];
  readonly verdict: Verdict;
}

const SENSOR = missingField('channels', 'sensor');
const MOUNT = missingField('channels', 'mount');
const CABLE = missingField('channels', 'cable');
const SENSOR_MASS = missingField('sensors', 'mass');
const MOUNT_MASS = missingField('mounts', 'mountMass');
const CABLE_MASS = missingField('cables', 'cableMass');
const LOCAL_MASS = missingField('channels', 'localMass');
const PURPOSE = missingField('channels', 'purpose');
const OWN_LIMIT = missingField('channels', 'massRatioLimit');

export const checkMass = (channel: Channel, limits: Limits): MassCheck => {
  const missing = new Missing();
  const { requirement, sensor, mount, cable } = channel;
  const sensorMass = missing.need(sensor?.mass, sensor ? SENSOR_MASS : SENSOR);
  const mountMass = missing.need(mount?.mass, mount ? MOUNT_MASS : MOUNT);
  const cableMass = missing.need(cable?.mass, cable ? CABLE_MASS : CABLE);
  const asked = massAsked(requirement, limits, missing);
  const { local, limit, isLimitUnread } = asked;
  const known = addedMass(sensor, mount, cable);
  const totalKnown = sensorMass !== undefined && mountMass !== undefined && cableMass !== undefined;
  const judged = judgeMass(known, totalKnown, asked);
  const { ratio, verdict } = judged;
  if (verdict === 'INCOMPLETE' && ratio !== undefined && !isLimitUnread) missing.need(undefined, PURPOSE);

  const effect = ratio !== undefined && local ? levelEffect(ratio, local.model) : undefined;
  const isMassLike = local?.model === 'mass';
  return {
    total: totalKnown ? known : undefined,
    localMass: local?.complete ? local.mass : undefined,
    model: local?.complete ? local.model : undefined,
    ...judged,
    levelEffect: effect?.level,
    phase: isMassLike ? undefined : effect?.phase,
    frequencyShift: isMassLike && ratio !== undefined ? frequencyShift(ratio) : undefined,
    allowed:
      limit && local?.complete && mountMass !== undefined && cableMass !== undefined
        ? allowedSensorMass(local.mass, limit.pass, mountMass, cableMass)
        : undefined,
    holding: holding(channel, totalKnown ? known : undefined, limits),
    missing: missing.fields,
  };
};

/** What a row asks of the added mass. */
export interface MassAsked {
  readonly local: ReturnType<typeof governingLocalMass>;
  /** Absent while it cannot be said. */
  readonly limit?: Bound;
  readonly bounds: readonly Bound[];
  readonly isLimitUnread: boolean;
}

export const massAsked = (requirement: Requirement, limits: Limits, missing: Missing): MassAsked => {
  const local = governingLocalMass(requirement.localMass);
  if (!local?.complete) missing.need(undefined, LOCAL_MASS);
  const isPurposeUnread = missing.unread(requirement, { purpose: PURPOSE });
  const isLimitUnread = missing.unread(requirement, { massRatioLimit: OWN_LIMIT });
  const purpose = requirement.purpose ?? (isPurposeUnread ? undefined : limits.purpose);
  const limit = isLimitUnread ? undefined : purpose && limits.massRatio[purpose];
  return { local, limit, isLimitUnread, bounds: limit ? [limit] : PURPOSES.map((p) => limits.massRatio[p]) };
};

/** kg, as far as it is known. */
export const addedMass = (sensor: SensorType | undefined, mount: Mount | undefined, cable: Cable | undefined): number =>
  totalAddedMass(sensor?.mass ?? 0, mount?.mass ?? 0, cable?.mass ?? 0);

export type MassVerdict = Pick<MassCheck, 'ratio' | 'ratioAtLeast' | 'limit' | 'verdict'>;

/** `added` in kg. */
export const judgeMass = (added: number, isComplete: boolean, { local, limit, bounds }: MassAsked): MassVerdict => {
  const lowest = local && massRatio(added, local.mass);
  const ratio = isComplete && local?.complete ? lowest : undefined;
  return {
    ratio,
    ratioAtLeast: ratio === undefined ? lowest : undefined,
    limit,
    verdict: ratioVerdict(ratio, lowest, bounds),
  };
};

/** While the purpose is not known, only what holds for every purpose counts; a partly known ratio can only fail. */
const ratioVerdict = (ratio: number | undefined, lowest: number | undefined, bounds: readonly Bound[]): Verdict => {
  let shared: Verdict | undefined;
  for (const { pass, warn } of bounds) {
    let verdict = verdictAtMost(ratio ?? lowest, pass, warn);
    if (ratio === undefined && verdict !== 'FAIL') verdict = 'INCOMPLETE';
    if (shared !== undefined && shared !== verdict) return 'INCOMPLETE';
    shared = verdict;
  }
  return shared ?? 'INCOMPLETE';
};

/** F = m·a at the highest peak; a joint carries a third of its holding force (common practice, no source). */
const holding = ({ mount, requirement }: Channel, total: number | undefined, limits: Limits): MassCheck['holding'] =>
  mount?.holdingForce === undefined || total === undefined || requirement.levelHigh === undefined
    ? undefined
    : { force: total * requirement.levelHigh, allowed: mount.holdingForce / limits.holdingFactor };
