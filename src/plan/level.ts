import { biasSwing, upperLimit, type Ceiling, type CeilingCause } from '../core/level/ceiling';
import { availableRange, decibels, headroom, signalToNoise } from '../core/level/margin';
import { sensitivityLeastOverTemperature, sensitivityMostOverTemperature } from '../core/level/sensitivity';
import type { Band } from '../core/thermal/band';
import { verdictAtLeast, worstVerdict, type Verdict } from '../core/verdict';
import type { InputMode, OutputMode } from './fields';
import type { Limits } from './limits';
import { Missing, missingField, type MissingField } from './missing';
import type { Channel, Input, Requirement, SensorType } from './model';
import { channelNoise, type ChannelNoise } from './noise';

export interface LevelCheck {
  /** V/(m/s²), or C/(m/s²) for charge output, over the temperature range. */
  readonly sensitivityMin?: number;
  readonly sensitivityMax?: number;
  /** m/s² r.m.s. */
  readonly noise?: number;
  /** The two parts of the noise as far as they are known. */
  readonly sensorNoise?: number;
  readonly inputNoise?: number;
  readonly signalToNoise?: number;
  /** m/s² peak and what sets it. */
  readonly ceiling?: Ceiling;
  readonly headroom?: number;
  /** No voltage is left for the signal, so that there is no headroom at any level. */
  readonly noSwing: boolean;
  /** Upper bounds of the two margins while a term is not known. */
  readonly signalToNoiseAtMost?: number;
  readonly headroomAtMost?: number;
  readonly ceilingAtMost?: Ceiling;
  readonly rangeNeeded?: number;
  readonly rangeAvailable?: number;
  readonly restsOnReferenceSensitivity: boolean;
  readonly modeMismatch?: { readonly output: OutputMode; readonly mode: InputMode };
  readonly missing: readonly MissingField[];
  readonly lowEnd: Verdict;
  readonly highEnd: Verdict;
  readonly verdict: Verdict;
}

const SENSOR = missingField('channels', 'sensor');
const INPUT = missingField('channels', 'input');
const LEVEL_LOW = missingField('channels', 'levelLow');
const LEVEL_HIGH = missingField('channels', 'levelHigh');
const OUTPUT = missingField('sensors', 'output');
const SENSITIVITY = missingField('sensors', 'sensitivity');
const CHARGE_SENSITIVITY = missingField('sensors', 'chargeSensitivity');
const FULL_SCALE = missingField('sensors', 'fullScale');
const BIAS_MIN = missingField('sensors', 'biasMin');
const BIAS_MAX = missingField('sensors', 'biasMax');
const MODE = missingField('inputs', 'mode');
const RANGE = missingField('inputs', 'range');
const GAIN = missingField('inputs', 'gain');
const SUPPLY = missingField('inputs', 'supply');
const DROP = missingField('inputs', 'sourceDrop');
const FLOOR = missingField('inputs', 'biasFloor');
const OUTPUT_LIMIT = missingField('inputs', 'outputLimit');

/** Which input a sensor's output belongs to. */
export const MODE_OF: Record<OutputMode, InputMode> = {
  IEPE: 'IEPE',
  charge: 'charge',
  DC: 'voltage',
  voltage: 'voltage',
  bridge: 'bridge',
};

export const modeMismatch = (sensor?: SensorType, input?: Input): LevelCheck['modeMismatch'] =>
  sensor?.output && input?.mode && MODE_OF[sensor.output] !== input.mode
    ? { output: sensor.output, mode: input.mode }
    : undefined;

/** Whether the input takes the sensor's output. */
export const inputModes = (sensor?: SensorType, input?: Input): Verdict =>
  modeMismatch(sensor, input) ? 'FAIL' : sensor?.output && input?.mode ? 'PASS' : 'INCOMPLETE';

/** Sensitivity at the reference, in the unit of the output. */
export const referenceSensitivity = (sensor: SensorType | undefined): number | undefined =>
  sensor?.output === undefined ? undefined : sensor.output === 'charge' ? sensor.chargeSensitivity : sensor.sensitivity;

const OWN_LIMITS = {
  signalToNoiseLimit: missingField('channels', 'signalToNoiseLimit'),
  headroomLimit: missingField('channels', 'headroomLimit'),
};

/** Noise and ceiling of a chain at the temperatures of a row; no level counts yet. */
export interface LevelChain {
  readonly sensitivityMin?: number;
  readonly sensitivityMax?: number;
  readonly noise: ChannelNoise;
  /** Of the terms that are known. */
  readonly ceiling?: Ceiling;
  readonly isCeilingComplete: boolean;
  readonly modes: Verdict;
}

/** Does not depend on the mount, and on the cable for charge output only. */
export const levelChain = (channel: Channel, band: Band | undefined, missing: Missing): LevelChain => {
  const { sensor, input } = channel;
  missing.need(sensor?.output, sensor ? OUTPUT : SENSOR);
  const reference = referenceSensitivity(sensor);
  if (sensor?.output) missing.need(reference, sensor.output === 'charge' ? CHARGE_SENSITIVITY : SENSITIVITY);
  const smallest = reference && sensitivityLeastOverTemperature(reference, band?.low);
  const largest = reference && sensitivityMostOverTemperature(reference, band?.high);
  const noise = channelNoise(channel, smallest, missing);
  const terms = ceilingTerms(sensor, input, largest, missing);
  if (input) missing.need(input.mode, MODE);
  return {
    sensitivityMin: smallest,
    sensitivityMax: largest,
    noise,
    ceiling: upperLimit(terms.known),
    isCeilingComplete: terms.complete,
    modes: inputModes(sensor, input),
  };
};

export type LevelMargins = Pick<
  LevelCheck,
  'signalToNoise' | 'noSwing' | 'headroom' | 'signalToNoiseAtMost' | 'headroomAtMost' | 'lowEnd' | 'highEnd' | 'verdict'
>;

/** What the levels of a row make of a chain. */
export const judgeLevels = (
  { levelLow, levelHigh }: Pick<Requirement, 'levelLow' | 'levelHigh'>,
  { noise, ceiling, isCeilingComplete, modes }: LevelChain,
  { signalToNoise: lowLimit, headroom: highLimit }: Limits,
): LevelMargins => {
  const ratioAtMost = marginOf(levelLow, noise.known, signalToNoise);
  const headroomAtMost = marginOf(levelHigh, ceiling?.value, headroom);
  const ratio = noise.complete ? ratioAtMost : undefined;
  const room = isCeilingComplete ? headroomAtMost : undefined;
  const lowEnd = marginVerdict(ratio, ratioAtMost, lowLimit.pass, lowLimit.warn);
  const noSwing = isCeilingComplete && ceiling?.value === 0;
  const highEnd = noSwing ? 'FAIL' : marginVerdict(room, headroomAtMost, highLimit.pass, highLimit.warn);
  return {
    signalToNoise: ratio,
    noSwing,
    headroom: room,
    signalToNoiseAtMost: noise.complete ? undefined : ratioAtMost,
    headroomAtMost: isCeilingComplete ? undefined : headroomAtMost,
    lowEnd,
    highEnd,
    verdict: worstVerdict([lowEnd, highEnd, modes]),
  };
};

export const checkLevel = (channel: Channel, band: Band | undefined, limits: Limits): LevelCheck => {
  const missing = new Missing();
  const { requirement, sensor, input } = channel;
  missing.unread(requirement, OWN_LIMITS);
  const levelLow = missing.need(requirement.levelLow, LEVEL_LOW);
  const levelHigh = missing.need(requirement.levelHigh, LEVEL_HIGH);
  const chain = levelChain(channel, band, missing);
  const { noise, ceiling, isCeilingComplete, sensitivityMin, sensitivityMax } = chain;
  const whole = noise.complete ? noise.known : undefined;
  const lowLimit = limits.signalToNoise.pass;
  return {
    ...judgeLevels(requirement, chain, limits),
    sensitivityMin,
    sensitivityMax,
    noise: whole,
    sensorNoise: noise.sensor,
    inputNoise: noise.input,
    ceiling: isCeilingComplete ? ceiling : undefined,
    ceilingAtMost: isCeilingComplete ? undefined : ceiling,
    rangeNeeded: levelLow !== undefined && levelHigh !== undefined ? decibels(levelHigh, levelLow) : undefined,
    rangeAvailable:
      isCeilingComplete && ceiling && whole !== undefined && whole > 0 && !Number.isNaN(lowLimit)
        ? availableRange(ceiling.value, whole, lowLimit)
        : undefined,
    restsOnReferenceSensitivity: band === undefined && referenceSensitivity(sensor) !== undefined,
    modeMismatch: modeMismatch(sensor, input),
    missing: missing.fields,
  };
};

const marginOf = (
  level: number | undefined,
  bound: number | undefined,
  margin: (level: number, bound: number) => number,
): number | undefined => {
  if (level === undefined || bound === undefined) return undefined;
  const value = margin(level, bound);
  return Number.isFinite(value) ? value : undefined;
};

/** A margin that can only shrink by what is not known yet can fail already, never pass. */
const marginVerdict = (margin: number | undefined, atMost: number | undefined, pass: number, warn?: number): Verdict =>
  margin === undefined && verdictAtLeast(atMost, pass, warn) !== 'FAIL'
    ? 'INCOMPLETE'
    : verdictAtLeast(margin ?? atMost, pass, warn);

interface Terms {
  readonly known: Partial<Record<CeilingCause, number>>;
  readonly complete: boolean;
}

const ceilingTerms = (
  sensor: SensorType | undefined,
  input: Input | undefined,
  sensitivity: number | undefined,
  missing: Missing,
): Terms => {
  const known: Partial<Record<CeilingCause, number>> = {};
  const fullScale = sensor && missing.need(sensor.fullScale, FULL_SCALE);
  if (fullScale !== undefined) known['full scale'] = fullScale;
  if (!input) missing.need(undefined, INPUT);
  const range = input && missing.need(input.range, RANGE);
  const isCharge = sensor?.output === 'charge';
  const gain = isCharge ? input && missing.need(input.gain, GAIN) : 1;
  const voltSensitivity = sensitivity === undefined || gain === undefined ? undefined : sensitivity * gain;
  if (range !== undefined && voltSensitivity !== undefined) known['input range'] = range / voltSensitivity;
  let complete = fullScale !== undefined && known['input range'] !== undefined && sensor?.output !== undefined;
  if (sensor?.output === 'IEPE') {
    const swing = swingOf(sensor, input, missing);
    if (swing !== undefined && voltSensitivity !== undefined) known['bias swing'] = swing / voltSensitivity;
    complete &&= known['bias swing'] !== undefined;
  }
  if (isCharge) {
    const output = input && missing.need(input.outputLimit, OUTPUT_LIMIT);
    if (output !== undefined && voltSensitivity !== undefined) known['amplifier output'] = output / voltSensitivity;
    complete &&= known['amplifier output'] !== undefined;
  }
  return { known, complete };
};

const swingOf = (sensor: SensorType, input: Input | undefined, missing: Missing): number | undefined => {
  const biasMin = missing.need(sensor.biasMin, BIAS_MIN);
  const biasMax = missing.need(sensor.biasMax, BIAS_MAX);
  if (!input) return undefined;
  const supply = missing.need(input.supply, SUPPLY);
  const drop = missing.need(input.sourceDrop, DROP);
  const floor = missing.need(input.biasFloor, FLOOR);
  if (biasMin === undefined || biasMax === undefined) return undefined;
  if (supply === undefined || drop === undefined || floor === undefined) return undefined;
  return biasSwing(supply, biasMin, biasMax, drop, floor);
};
