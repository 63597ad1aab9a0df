import { analyserLimit } from '../core/frequency/analyser';
import { cableDriveLimit } from '../core/frequency/cable';
import { cornerFromLimit, cornerFromTimeConstant } from '../core/frequency/corner';
import { mountedResonance } from '../core/frequency/resonance';
import type { HighCause } from '../core/frequency/span';
import { spanVerdict, type Verdict } from '../core/verdict';
import type { Bound, Limits } from './limits';
import { Missing, missingField, type MissingField } from './missing';
import type { Channel, Input, Mount, Requirement, SensorType } from './model';
import { cutSpan, type ChannelSpan, type Caps, type SpanMemory } from './span-memory';
import { rowBound } from './thermal';

export type PoleCause = 'sensor' | 'charge amplifier' | 'AC coupling';

export interface FrequencyCheck {
  readonly mountedResonance?: number;
  /** Corners in Hz, and where each comes from. */
  readonly lowPoles?: readonly number[];
  readonly poleCauses?: readonly PoleCause[];
  readonly caps: Caps;
  readonly referenceFrequency: number;
  /** Null when empty, undefined while not known. */
  readonly span?: ChannelSpan | null;
  readonly wide?: ChannelSpan | null;
  /** The span cannot be wider than this while something is not known. */
  readonly widest?: ChannelSpan | null;
  readonly tolerance: Bound;
  readonly isReversed: boolean;
  readonly missing: readonly MissingField[];
  readonly verdict: Verdict;
}

const SENSOR = missingField('channels', 'sensor');
const MOUNT = missingField('channels', 'mount');
const CABLE = missingField('channels', 'cable');
const INPUT = missingField('channels', 'input');
const BAND_LOW = missingField('channels', 'bandLow');
const BAND_HIGH = missingField('channels', 'bandHigh');
const LEVEL_HIGH = missingField('channels', 'levelHigh');
const OUTPUT = missingField('sensors', 'output');
const RESONANCE = missingField('sensors', 'resonance');
const QUALITY = missingField('sensors', 'qualityFactor');
const SENSOR_MASS = missingField('sensors', 'mass');
const LOW_LIMIT = missingField('sensors', 'lowLimit');
const SENSITIVITY = missingField('sensors', 'sensitivity');
const CABLE_CAPACITANCE = missingField('cables', 'cableCapacitance');
const SAMPLE_RATE = missingField('inputs', 'sampleRate');
const COUPLING = missingField('inputs', 'couplingPoles');
const TIME_CONSTANT = missingField('inputs', 'timeConstant');
const SUPPLY_CURRENT = missingField('inputs', 'supplyCurrent');
const SENSOR_CURRENT = missingField('inputs', 'sensorCurrent');

/** Where a blank means a default, a text that cannot be read must not. */
const OF_ROW = {
  spanTolerance: missingField('channels', 'spanTolerance'),
  referenceFrequency: missingField('channels', 'referenceFrequency'),
};
const OF_SENSOR = { lowLimit: LOW_LIMIT, lowLimitLoss: missingField('sensors', 'lowLimitLoss') };
const OF_MOUNT = { stiffness: missingField('mounts', 'stiffness') };

/** Data sheets that give a low limit without its loss mean this one (common practice, no source). */
export const USUAL_LOSS = 0.05;

/** The response of a chain before anything cuts it off at the top. Does not depend on the cable. */
export interface ChainResponse {
  readonly resonance?: number;
  readonly poles: Poles;
  /** All that it takes is known. */
  readonly isComplete: boolean;
  /** Null when empty; while the resonance is not known, nothing limits it. */
  readonly pass: ChannelSpan | null;
  readonly wide: ChannelSpan | null;
}

export const chainResponse = (
  { requirement, sensor, mount, input }: Pick<Channel, 'requirement' | 'sensor' | 'mount' | 'input'>,
  limits: Limits,
  memory: SpanMemory,
  missing: Missing,
): ChainResponse => {
  const resonance = mounted(sensor, mount, missing);
  const qualityFactor = sensor && missing.need(sensor.qualityFactor, QUALITY);
  const poles = lowPoles(sensor, input, missing);
  const { pass, warn = pass } = rowBound(requirement.spanTolerance, limits.spanTolerance);
  const reference = requirement.referenceFrequency ?? limits.referenceFrequency;
  const spanAt = (tolerance: number): ChannelSpan | null =>
    resonance === undefined || qualityFactor === undefined
      ? { low: 0, high: Infinity, highLimitedBy: 'response' }
      : memory.span({ lowPoles: poles.corners, resonance, qualityFactor, reference, tolerance });
  const isComplete = resonance !== undefined && qualityFactor !== undefined && poles.complete;
  return { resonance, poles, isComplete, pass: spanAt(pass), wide: spanAt(Math.max(pass, warn)) };
};

/** Whether something was given that cannot be read, where a blank would mean a default. */
export const isResponseUnread = ({ requirement, sensor, mount }: Channel, missing: Missing): boolean =>
  [missing.unread(requirement, OF_ROW), missing.unread(sensor, OF_SENSOR), missing.unread(mount, OF_MOUNT)].includes(
    true,
  );

export type SpanVerdict = Pick<FrequencyCheck, 'span' | 'wide' | 'widest' | 'isReversed' | 'verdict'>;

/** What is left of a response below its caps, against the band of a row. */
export const judgeSpan = (
  { bandLow: low, bandHigh: high }: Pick<Requirement, 'bandLow' | 'bandHigh'>,
  response: ChainResponse,
  caps: KnownCaps,
  isUnread: boolean,
): SpanVerdict => {
  const isReversed = low !== undefined && high !== undefined && low > high;
  const isComplete = !isUnread && response.isComplete && caps.complete;
  const span = isComplete ? cutSpan(response.pass, caps.known) : undefined;
  const widest = isUnread ? undefined : cutSpan(response.wide, caps.known);
  return {
    span,
    wide: isComplete ? widest : undefined,
    widest: isComplete ? undefined : widest,
    isReversed,
    verdict: isReversed ? 'INCOMPLETE' : spanVerdict({ low, high }, emptyOr(span), emptyOr(widest)),
  };
};

export const checkFrequency = (
  channel: Channel,
  largestSensitivity: number | undefined,
  limits: Limits,
  memory: SpanMemory,
): FrequencyCheck => {
  const missing = new Missing();
  const { requirement } = channel;
  missing.need(requirement.bandLow, BAND_LOW);
  missing.need(requirement.bandHigh, BAND_HIGH);
  const response = chainResponse(channel, limits, memory, missing);
  const caps = capsOf(channel, largestSensitivity, missing);
  const isUnread = isResponseUnread(channel, missing);
  const { poles } = response;
  return {
    ...judgeSpan(requirement, response, caps, isUnread),
    mountedResonance: response.resonance,
    lowPoles: poles.complete ? poles.corners : undefined,
    poleCauses: poles.complete ? poles.causes : undefined,
    caps: caps.known,
    referenceFrequency: requirement.referenceFrequency ?? limits.referenceFrequency,
    tolerance: rowBound(requirement.spanTolerance, limits.spanTolerance),
    missing: missing.fields,
  };
};

const emptyOr = (span: ChannelSpan | null | undefined) => (span === null ? 'empty' : span);

const mounted = (sensor: SensorType | undefined, mount: Mount | undefined, missing: Missing): number | undefined => {
  if (!sensor) missing.need(undefined, SENSOR);
  if (!mount) missing.need(undefined, MOUNT);
  const own = sensor && missing.need(sensor.resonance, RESONANCE);
  if (own === undefined || !mount) return undefined;
  if (mount.stiffness === undefined) return own;
  const mass = missing.need(sensor?.mass, SENSOR_MASS);
  return mass === undefined ? undefined : mountedResonance(own, mass, mount.stiffness);
};

export interface Poles {
  readonly corners: readonly number[];
  readonly causes: readonly PoleCause[];
  readonly complete: boolean;
}

const lowPoles = (sensor: SensorType | undefined, input: Input | undefined, missing: Missing): Poles => {
  const output = sensor && missing.need(sensor.output, OUTPUT);
  if (!input) missing.need(undefined, INPUT);
  const coupling = input && missing.need(input.couplingPoles, COUPLING);
  let own: number | undefined;
  let complete = output !== undefined && coupling !== undefined;
  if (output === 'charge') {
    const timeConstant = input && missing.need(input.timeConstant, TIME_CONSTANT);
    own = timeConstant && cornerFromTimeConstant(timeConstant);
    complete &&= own !== undefined;
  } else if (sensor && output !== undefined) {
    const isNeeded = output === 'IEPE' || output === 'voltage';
    const lowLimit = isNeeded ? missing.need(sensor.lowLimit, LOW_LIMIT) : sensor.lowLimit;
    own = lowLimit && cornerFromLimit(lowLimit, sensor.lowLimitLoss ?? USUAL_LOSS);
    complete &&= own !== undefined || !isNeeded;
  }
  const cause: PoleCause = output === 'charge' ? 'charge amplifier' : 'sensor';
  const others = coupling ?? [];
  return {
    corners: own === undefined ? others : [own, ...others],
    causes:
      own === undefined ? others.map(() => 'AC coupling') : [cause, ...others.map((): PoleCause => 'AC coupling')],
    complete,
  };
};

export interface KnownCaps {
  readonly known: Caps;
  readonly complete: boolean;
}

export const capsOf = (channel: Channel, sensitivity: number | undefined, missing: Missing): KnownCaps => {
  const { sensor, input } = channel;
  const rate = input && missing.need(input.sampleRate, SAMPLE_RATE);
  const known: { -readonly [C in Exclude<HighCause, 'response'>]?: number } = {};
  if (rate !== undefined) known.analyser = analyserLimit(rate);
  if (sensor?.output !== 'IEPE') return { known, complete: rate !== undefined };
  const drive = cableDrive(channel, sensitivity, missing);
  if (drive !== undefined) known['cable drive'] = drive;
  return { known, complete: rate !== undefined && drive !== undefined };
};

const cableDrive = (
  { requirement, cable, input }: Channel,
  sensitivity: number | undefined,
  missing: Missing,
): number | undefined => {
  const peak = missing.need(requirement.levelHigh, LEVEL_HIGH);
  const capacitance = missing.need(cable?.capacitance, cable ? CABLE_CAPACITANCE : CABLE);
  missing.need(sensitivity, SENSITIVITY);
  if (!input) return undefined;
  const supply = missing.need(input.supplyCurrent, SUPPLY_CURRENT);
  const kept = missing.need(input.sensorCurrent, SENSOR_CURRENT);
  if (peak === undefined || capacitance === undefined || sensitivity === undefined) return undefined;
  return supply === undefined || kept === undefined
    ? undefined
    : cableDriveLimit(supply, kept, capacitance, peak * sensitivity);
};
