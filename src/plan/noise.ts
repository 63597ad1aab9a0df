import {
  bandNoise,
  chargeNoiseDensity,
  inputNoiseDensity,
  noiseBandwidth,
  rootSumSquare,
  whiteNoise,
} from '../core/level/noise';
import { Missing, missingField } from './missing';
import type { Cable, Channel, Input, SensorType } from './model';

/** Noise of a channel as an acceleration, m/s² r.m.s. */
export interface ChannelNoise {
  readonly sensor?: number;
  readonly input?: number;
  /** Root of the sum of squares of the known parts: a lower bound unless complete. */
  readonly known?: number;
  readonly complete: boolean;
}

const CABLE = missingField('channels', 'cable');
const BAND_LOW = missingField('channels', 'bandLow');
const BAND_HIGH = missingField('channels', 'bandHigh');
const LINE_SPACING = missingField('channels', 'lineSpacing');
const NOISE_DENSITY = missingField('sensors', 'noiseDensity');
const CAPACITANCE = missingField('sensors', 'capacitance');
const CABLE_CAPACITANCE = missingField('cables', 'cableCapacitance');
const NOISE_VOLTAGE = missingField('inputs', 'noiseVoltage');
const FEEDBACK = missingField('inputs', 'feedbackCapacitance');
const RANGE = missingField('inputs', 'range');
const DYNAMIC_RANGE = missingField('inputs', 'dynamicRange');
const SAMPLE_RATE = missingField('inputs', 'sampleRate');
const GAIN = missingField('inputs', 'gain');

export interface Detected {
  readonly low: number;
  readonly high: number;
  readonly lineSpacing?: number;
}

/** `sensitivity` is the smallest over temperature, in the unit of the sensor's output. */
export const channelNoise = (channel: Channel, sensitivity: number | undefined, missing: Missing): ChannelNoise => {
  const { sensor, cable, input } = channel;
  const detected = detectedBand(channel, missing);
  const isCharge = sensor?.output === 'charge';
  const charge = isCharge ? chargeDensity(sensor, cable, input, missing) : undefined;
  const table = sensor?.output && !isCharge ? missing.need(sensor.noiseDensity, NOISE_DENSITY) : undefined;
  const volts = input && inputDensity(input, missing);
  const gain = isCharge ? input && missing.need(input.gain, GAIN) : 1;
  if (!detected) return { complete: false };

  const bandwidth = noiseBandwidth(detected.low, detected.high, detected.lineSpacing);
  const white = (density: number | undefined, per: number | undefined) =>
    density === undefined || per === undefined ? undefined : whiteNoise(density / per, bandwidth);
  const own = table
    ? finite(bandNoise(table, detected.low, detected.high, detected.lineSpacing))
    : white(charge, sensitivity);
  const added = white(volts, sensitivity === undefined || gain === undefined ? undefined : sensitivity * gain);
  const known = own === undefined && added === undefined ? undefined : rootSumSquare([own ?? 0, added ?? 0]);
  return { sensor: own, input: added, known, complete: own !== undefined && added !== undefined };
};

/** The whole band, or one line at its lower edge. A band without width has no noise to compute. */
export const detectedBand = ({ requirement }: Channel, missing: Missing): Detected | undefined => {
  const { detector } = requirement;
  const low = missing.need(requirement.bandLow, BAND_LOW);
  if (detector.kind === 'line') {
    const lineSpacing = missing.need(detector.lineSpacing, LINE_SPACING);
    return low === undefined || lineSpacing === undefined ? undefined : { low, high: low, lineSpacing };
  }
  const high = missing.need(requirement.bandHigh, BAND_HIGH);
  return low === undefined || high === undefined || !(high > low) ? undefined : { low, high };
};

const chargeDensity = (
  sensor: SensorType,
  cable: Cable | undefined,
  input: Input | undefined,
  missing: Missing,
): number | undefined => {
  const source = missing.need(sensor.capacitance, CAPACITANCE);
  const run = missing.need(cable?.capacitance, cable ? CABLE_CAPACITANCE : CABLE);
  const noise = input && missing.need(input.noiseVoltage, NOISE_VOLTAGE);
  const feedback = input && missing.need(input.feedbackCapacitance, FEEDBACK);
  if (source === undefined || run === undefined || noise === undefined || feedback === undefined) return undefined;
  return chargeNoiseDensity(noise, source, run, feedback);
};

const inputDensity = (input: Input, missing: Missing): number | undefined => {
  const range = missing.need(input.range, RANGE);
  const dynamicRange = missing.need(input.dynamicRange, DYNAMIC_RANGE);
  const sampleRate = missing.need(input.sampleRate, SAMPLE_RATE);
  if (range === undefined || dynamicRange === undefined || sampleRate === undefined) return undefined;
  return inputNoiseDensity(range, dynamicRange, sampleRate);
};

/** A sloped density has no finite noise down to 0 Hz. */
const finite = (value: number): number | undefined => (Number.isFinite(value) ? value : undefined);
