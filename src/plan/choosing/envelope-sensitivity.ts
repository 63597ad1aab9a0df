import { peakVoltageAllowed } from '../../core/frequency/cable';
import { biasSwing } from '../../core/level/ceiling';
import { amplitudeRatio } from '../../core/level/margin';
import { chargeNoiseDensity, inputNoiseDensity, rootSumSquare, whiteNoise } from '../../core/level/noise';
import { EDGE_SLACK } from '../../core/verdict';
import { MODE_OF, type LevelCheck } from '../level';
import type { Limits } from '../limits';
import { missingField, type MissingField } from '../missing';
import type { Channel, Input } from '../model';
import type { BoundKey, NumberBound } from './envelope-bound';
import { judged, lacking, limitOf } from './envelope-judge';
import { bandwidthOf, LEVEL_HIGH, LEVEL_LOW } from './envelope-level';

const OF_INPUT = (key: string) => missingField('inputs', key);
const INPUT = missingField('channels', 'input');
const BAND_HIGH = missingField('channels', 'bandHigh');
const CABLE = missingField('channels', 'cable');
const CABLE_CAPACITANCE = missingField('cables', 'cableCapacitance');
const CAPACITANCE = missingField('sensors', 'capacitance');
const BIAS_MIN = missingField('sensors', 'biasMin');
const BIAS_MAX = missingField('sensors', 'biasMax');
const OUTPUT = missingField('sensors', 'output');

/** Least and largest sensitivity over the temperature range at one input, each with what limits it. */
export const sensitivityBounds = (
  channel: Channel,
  limits: Limits,
  check: LevelCheck,
  input: Input | undefined,
): readonly NumberBound[] => {
  const whole = { channel, limits, check, input };
  const both = [noiseBound(whole), rangeBound(whole)];
  if (input?.mode === 'IEPE') return [...both, swingBound(whole), driveBound(whole)];
  return input?.mode === 'charge' ? [...both, amplifierBound(whole)] : both;
};

interface Whole {
  readonly channel: Channel;
  readonly limits: Limits;
  readonly check: LevelCheck;
  readonly input: Input | undefined;
}

const bound = (
  { channel, check, input }: Whole,
  key: BoundKey,
  direction: NumberBound['direction'],
  rest: Pick<NumberBound, 'causes' | 'limit' | 'pass' | 'warn' | 'missing'> & {
    readonly without?: readonly MissingField[];
    readonly turnsAt?: { readonly pass?: number; readonly warn?: number };
  },
): NumberBound => {
  const { sensor } = channel;
  const value = direction === 'atLeast' ? check.sensitivityMin : check.sensitivityMax;
  const isJudged = sensor?.output !== undefined && MODE_OF[sensor.output] === input?.mode;
  return judged({
    key,
    unit: input?.mode === 'charge' ? 'pC/g' : 'mV/g',
    direction,
    input: input?.name,
    ...rest,
    missing: [...lacking([input, INPUT]), ...(input ? lacking([input.mode, OF_INPUT('mode')]) : []), ...rest.missing],
    value: isJudged ? value : undefined,
    valueMissing: sensor && !isJudged ? lacking([sensor.output, OUTPUT]) : [],
    isJudged,
  });
};

/** Noise of the input, and of a charge amplifier with all that hangs at it, must not alone exceed what is allowed. */
const noiseBound = (whole: Whole): NumberBound => {
  const { channel, limits, input } = whole;
  const { sensor, cable, requirement } = channel;
  const { bandwidth, missing } = bandwidthOf(channel);
  const isCharge = input?.mode === 'charge';
  const { range, dynamicRange, sampleRate, noiseVoltage, feedbackCapacitance } = input ?? {};
  const gain = isCharge ? input.gain : 1;
  const density =
    range === undefined || dynamicRange === undefined || sampleRate === undefined || gain === undefined
      ? undefined
      : inputNoiseDensity(range, dynamicRange, sampleRate) / gain;
  const amplifier = !isCharge
    ? 0
    : noiseVoltage === undefined || feedbackCapacitance === undefined || cable?.capacitance === undefined
      ? undefined
      : chargeNoiseDensity(noiseVoltage, sensor?.capacitance ?? 0, cable.capacitance, feedbackCapacitance);
  const noise =
    density === undefined || amplifier === undefined || bandwidth === undefined
      ? undefined
      : whiteNoise(rootSumSquare([density, amplifier]), bandwidth);
  const { levelLow } = requirement;
  const least = (dB: number | undefined) =>
    noise === undefined || levelLow === undefined || dB === undefined
      ? undefined
      : noise / (levelLow / amplitudeRatio(dB));
  return bound(whole, 'sensitivity over input noise', 'atLeast', {
    causes: [LEVEL_LOW, OF_INPUT('range'), OF_INPUT('dynamicRange')],
    limit: limitOf('signalToNoise', limits.signalToNoise),
    pass: least(limits.signalToNoise.pass),
    warn: least(limits.signalToNoise.warn),
    missing: [
      ...lacking([levelLow, LEVEL_LOW]),
      ...missing,
      ...(input
        ? lacking(
            [range, OF_INPUT('range')],
            [dynamicRange, OF_INPUT('dynamicRange')],
            [sampleRate, OF_INPUT('sampleRate')],
          )
        : []),
      ...(isCharge
        ? lacking(
            [gain, OF_INPUT('gain')],
            [noiseVoltage, OF_INPUT('noiseVoltage')],
            [feedbackCapacitance, OF_INPUT('feedbackCapacitance')],
            [cable?.capacitance, cable ? CABLE_CAPACITANCE : CABLE],
          )
        : []),
    ],
    without: isCharge ? lacking([sensor?.capacitance, CAPACITANCE]) : [],
  });
};

/** Largest sensitivity at which the highest level with its headroom fits a peak volt. */
const fitting = (whole: Whole, volts: number | undefined) => {
  const { channel, limits, input } = whole;
  const { levelHigh } = channel.requirement;
  const gain = input?.mode === 'charge' ? input.gain : 1;
  const most = (dB: number | undefined) =>
    volts === undefined || levelHigh === undefined || dB === undefined || gain === undefined
      ? undefined
      : volts / gain / (levelHigh * amplitudeRatio(dB));
  return {
    limit: limitOf('headroom', limits.headroom),
    pass: most(limits.headroom.pass),
    warn: most(limits.headroom.warn),
    missing: [...lacking([levelHigh, LEVEL_HIGH]), ...(input ? lacking([gain, OF_INPUT('gain')]) : [])],
  };
};

const rangeBound = (whole: Whole): NumberBound => {
  const range = whole.input?.range;
  const fit = fitting(whole, range);
  return bound(whole, 'sensitivity in input range', 'atMost', {
    ...fit,
    causes: [LEVEL_HIGH, OF_INPUT('range')],
    missing: [...fit.missing, ...(whole.input ? lacking([range, OF_INPUT('range')]) : [])],
  });
};

const amplifierBound = (whole: Whole): NumberBound => {
  const limit = whole.input?.outputLimit;
  const fit = fitting(whole, limit);
  return bound(whole, 'sensitivity in amplifier output', 'atMost', {
    ...fit,
    causes: [LEVEL_HIGH, OF_INPUT('outputLimit')],
    missing: [...fit.missing, ...lacking([limit, OF_INPUT('outputLimit')])],
  });
};

/** Without a sensor the bias is taken where it leaves the most room, in the middle of what the supply gives. */
const swingBound = (whole: Whole): NumberBound => {
  const { supply, sourceDrop, biasFloor } = whole.input ?? {};
  const { biasMin, biasMax } = whole.channel.sensor ?? {};
  const isKnown = supply !== undefined && sourceDrop !== undefined && biasFloor !== undefined;
  const middle = isKnown ? (supply - sourceDrop + biasFloor) / 2 : undefined;
  const isBiasKnown = biasMin !== undefined && biasMax !== undefined;
  const swing =
    isKnown && middle !== undefined
      ? biasSwing(supply, isBiasKnown ? biasMin : middle, isBiasKnown ? biasMax : middle, sourceDrop, biasFloor)
      : undefined;
  const fit = fitting(whole, swing);
  return bound(whole, 'sensitivity in bias swing', 'atMost', {
    ...fit,
    causes: [LEVEL_HIGH, OF_INPUT('supply'), BIAS_MIN, BIAS_MAX],
    missing: [
      ...fit.missing,
      ...lacking(
        [supply, OF_INPUT('supply')],
        [sourceDrop, OF_INPUT('sourceDrop')],
        [biasFloor, OF_INPUT('biasFloor')],
      ),
    ],
    without: lacking([biasMin, BIAS_MIN], [biasMax, BIAS_MAX]),
  });
};

/** What the constant current still drives into the cable at the upper band edge. No headroom: the expected peak counts. */
const driveBound = (whole: Whole): NumberBound => {
  const { requirement, cable } = whole.channel;
  const { levelHigh, bandHigh } = requirement;
  const { supplyCurrent, sensorCurrent } = whole.input ?? {};
  const capacitance = cable?.capacitance;
  const isKnown = supplyCurrent !== undefined && sensorCurrent !== undefined && capacitance !== undefined;
  const most =
    isKnown && levelHigh !== undefined && bandHigh !== undefined
      ? peakVoltageAllowed(supplyCurrent, sensorCurrent, capacitance, bandHigh) / levelHigh
      : undefined;
  return bound(whole, 'sensitivity in cable drive', 'atMost', {
    causes: [LEVEL_HIGH, BAND_HIGH, CABLE_CAPACITANCE, OF_INPUT('supplyCurrent')],
    pass: most,
    turnsAt: { pass: most === undefined ? undefined : most * (1 + EDGE_SLACK) },
    missing: lacking(
      [levelHigh, LEVEL_HIGH],
      [bandHigh, BAND_HIGH],
      [capacitance, cable ? CABLE_CAPACITANCE : CABLE],
      [supplyCurrent, OF_INPUT('supplyCurrent')],
      [sensorCurrent, OF_INPUT('sensorCurrent')],
    ),
  });
};
