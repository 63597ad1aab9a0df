import { allowedDensity, noiseBandwidth } from '../../core/level/noise';
import { amplitudeRatio, decibels } from '../../core/level/margin';
import type { LevelCheck } from '../level';
import type { Limits } from '../limits';
import { Missing, missingField } from '../missing';
import type { Channel } from '../model';
import { detectedBand } from '../noise';
import type { NumberBound } from './envelope-bound';
import { judged, lacking, limitOf } from './envelope-judge';

export const LEVEL_LOW = missingField('channels', 'levelLow');
export const LEVEL_HIGH = missingField('channels', 'levelHigh');
const BAND_LOW = missingField('channels', 'bandLow');
const BAND_HIGH = missingField('channels', 'bandHigh');
const LINE_SPACING = missingField('channels', 'lineSpacing');
const FULL_SCALE = missingField('sensors', 'fullScale');

/** The analysed band in Hz of noise bandwidth, and what stops it. */
export const bandwidthOf = (channel: Channel) => {
  const missing = new Missing();
  const detected = detectedBand(channel, missing);
  const hasNoWidth = !detected && missing.fields.length === 0;
  return {
    bandwidth: detected && noiseBandwidth(detected.low, detected.high, detected.lineSpacing),
    missing: hasNoWidth ? [BAND_LOW, BAND_HIGH] : missing.fields,
  };
};

/** Full scale, noise of the whole channel as r.m.s. and as white density, and the range between. */
export const levelBounds = (channel: Channel, limits: Limits, check: LevelCheck): readonly NumberBound[] => {
  const { requirement, sensor } = channel;
  const { levelLow, levelHigh } = requirement;
  const { signalToNoise: lowEnd, headroom: highEnd } = limits;
  const isJudged = sensor !== undefined;
  const above = (dB: number | undefined) =>
    levelHigh === undefined || dB === undefined ? undefined : levelHigh * amplitudeRatio(dB);
  const below = (dB: number | undefined) =>
    levelLow === undefined || dB === undefined ? undefined : levelLow / amplitudeRatio(dB);
  const noiseMissing = isJudged && check.noise === undefined ? check.missing : [];
  const ceiling = check.ceiling?.value;
  const range = (high: number | undefined, low: number | undefined) =>
    high === undefined || low === undefined ? undefined : decibels(high, low);
  return [
    judged({
      key: 'full scale',
      unit: 'g',
      direction: 'atLeast',
      causes: [LEVEL_HIGH],
      limit: limitOf('headroom', highEnd),
      pass: above(highEnd.pass),
      warn: above(highEnd.warn),
      missing: lacking([levelHigh, LEVEL_HIGH]),
      value: sensor?.fullScale,
      valueMissing: sensor ? lacking([sensor.fullScale, FULL_SCALE]) : [],
      isJudged,
    }),
    judged({
      key: 'noise',
      unit: 'g',
      direction: 'atMost',
      causes: [LEVEL_LOW],
      limit: limitOf('signalToNoise', lowEnd),
      pass: below(lowEnd.pass),
      warn: below(lowEnd.warn),
      missing: lacking([levelLow, LEVEL_LOW]),
      value: check.noise,
      valueMissing: noiseMissing,
      isJudged,
    }),
    densityBound(channel, limits, check),
    judged({
      key: 'dynamic range',
      unit: 'dB',
      direction: 'atLeast',
      slackKind: 'dB',
      causes: [LEVEL_LOW, LEVEL_HIGH],
      pass: range(above(highEnd.pass), below(lowEnd.pass)),
      warn: range(above(highEnd.warn), below(lowEnd.warn)),
      missing: lacking([levelLow, LEVEL_LOW], [levelHigh, LEVEL_HIGH]),
      value: check.noise === 0 ? undefined : range(ceiling, check.noise),
      valueMissing: isJudged && (check.noise === undefined || ceiling === undefined) ? check.missing : [],
      isJudged,
    }),
  ];
};

/** The same as a density that is flat over the detector's band. */
const densityBound = (
  { requirement, ...channel }: Channel,
  { signalToNoise }: Limits,
  check: LevelCheck,
): NumberBound => {
  const { levelLow, detector } = requirement;
  const { bandwidth, missing } = bandwidthOf({ requirement, ...channel });
  const isJudged = channel.sensor !== undefined;
  const density = (ratio: number | undefined) =>
    levelLow === undefined || bandwidth === undefined || ratio === undefined
      ? undefined
      : allowedDensity(levelLow, ratio, bandwidth);
  return judged({
    key: 'white noise density',
    unit: 'µg/√Hz',
    direction: 'atMost',
    causes: [LEVEL_LOW, ...(detector.kind === 'line' ? [LINE_SPACING] : [BAND_LOW, BAND_HIGH])],
    limit: limitOf('signalToNoise', signalToNoise),
    pass: density(signalToNoise.pass),
    warn: density(signalToNoise.warn),
    missing: [...lacking([levelLow, LEVEL_LOW]), ...missing],
    value: check.noise === undefined || bandwidth === undefined ? undefined : check.noise / Math.sqrt(bandwidth),
    valueMissing: isJudged && check.noise === undefined ? check.missing : [],
    isJudged,
  });
};
