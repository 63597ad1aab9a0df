import { halfBand, worstDeviation } from '../../core/thermal/band';
import { allowedCoefficient, allowedCoefficientScaled } from '../../core/thermal/coefficient';
import { thermalBandVerdict, verdictAtMost } from '../../core/verdict';
import type { Limits } from '../limits';
import { missingField } from '../missing';
import type { Channel, SensorType } from '../model';
import { rowBound, type ThermalCheck } from '../thermal';
import type { NumberBound } from './envelope-bound';
import { judged, lacking, limitOf } from './envelope-judge';

const LOW = missingField('channels', 'temperatureLow');
const HIGH = missingField('channels', 'temperatureHigh');
const TOLERANCE = missingField('channels', 'thermalTolerance');
const MIN = missingField('sensors', 'temperatureMin');
const MAX = missingField('sensors', 'temperatureMax');
const DEVIATION = missingField('sensors', 'deviation');

/** Coefficient, deviation with and without correction, and the two ends of the rating. */
export const thermalBounds = (channel: Channel, limits: Limits, check: ThermalCheck): readonly NumberBound[] => {
  const { requirement, sensor } = channel;
  const { temperatureLow: low, temperatureHigh: high } = requirement;
  const isToleranceUnread = requirement.unread?.includes('thermalTolerance') === true;
  const tolerance = isToleranceUnread ? undefined : rowBound(requirement.thermalTolerance, limits.thermalTolerance);
  const limit = tolerance && limitOf('thermalTolerance', tolerance);
  const missingTolerance = lacking([tolerance, TOLERANCE]);
  const isJudged = sensor !== undefined;
  const { band } = check;
  const bandMissing = isJudged && !band ? [...check.missing] : [];
  const deviation = { unit: '%', direction: 'atMost', causes: [TOLERANCE], limit, isJudged } as const;
  return [
    coefficientBound(channel, limits),
    judged({
      ...deviation,
      key: 'thermal deviation',
      pass: tolerance?.pass,
      missing: missingTolerance,
      value: band && worstDeviation(band),
      valueMissing: bandMissing,
      ownVerdict: thermalBandVerdict(band, tolerance?.pass),
    }),
    judged({
      ...deviation,
      key: 'corrected deviation',
      pass: tolerance?.pass,
      missing: missingTolerance,
      value: band && halfBand(band),
      valueMissing: bandMissing,
      ownVerdict: verdictAtMost(band && halfBand(band), tolerance?.pass),
    }),
    judged({
      key: 'lowest rated temperature',
      unit: '°C',
      direction: 'atMost',
      slackKind: 'K',
      causes: [LOW],
      pass: low === undefined || high === undefined ? low : Math.min(low, high),
      missing: lacking([low, LOW]),
      value: sensor?.temperatureMin,
      valueMissing: sensor ? lacking([sensor.temperatureMin, MIN]) : [],
      isJudged,
    }),
    judged({
      key: 'highest rated temperature',
      unit: '°C',
      direction: 'atLeast',
      slackKind: 'K',
      causes: [HIGH],
      pass: low === undefined || high === undefined ? high : Math.max(low, high),
      missing: lacking([high, HIGH]),
      value: sensor?.temperatureMax,
      valueMissing: sensor ? lacking([sensor.temperatureMax, MAX]) : [],
      isJudged,
    }),
  ];
};

/** A sensor with a curve is judged by its deviation, not here. WARN: only a signed coefficient can be corrected. */
const coefficientBound = ({ requirement, sensor }: Channel, limits: Limits): NumberBound => {
  const { temperatureLow: low, temperatureHigh: high, unread } = requirement;
  const tolerance = unread?.includes('thermalTolerance')
    ? undefined
    : rowBound(requirement.thermalTolerance, limits.thermalTolerance);
  const calibration = sensor?.calibrationTemperature ?? limits.calibrationTemperature;
  const isOrdered = low !== undefined && high !== undefined && low <= high;
  const pass = tolerance && isOrdered ? allowedCoefficient(tolerance.pass, low, high, calibration) : undefined;
  const scaled = (sign: 1 | -1) =>
    tolerance && isOrdered ? allowedCoefficientScaled(tolerance.pass, low, high, calibration, sign) : Infinity;
  const sign = signOf(sensor);
  const warn = sign === 'unsigned' ? pass : sign ? scaled(sign) : Math.min(scaled(1), scaled(-1));
  const isReversed = low !== undefined && high !== undefined && !isOrdered;
  return judged({
    key: 'thermal coefficient',
    unit: '%/K',
    direction: 'atMost',
    causes: [LOW, HIGH, TOLERANCE],
    limit: tolerance && limitOf('thermalTolerance', tolerance),
    pass,
    warn: pass !== undefined && warn !== undefined && warn > pass ? warn : undefined,
    missing: [...lacking([low, LOW], [high, HIGH], [tolerance, TOLERANCE]), ...(isReversed ? [LOW, HIGH] : [])],
    value: hasCoefficient(sensor) ? Math.abs(sensor.coefficient) : undefined,
    valueMissing: sensor ? lacking([sensor.coefficient ?? sensor.deviation, DEVIATION]) : [],
    isJudged: hasCoefficient(sensor),
  });
};

const hasCoefficient = (sensor: SensorType | undefined): sensor is SensorType & { coefficient: number } =>
  sensor?.coefficient !== undefined &&
  sensor.deviation === undefined &&
  !['deviation', 'coefficient', 'coefficientSign', 'calibrationTemperature'].some((key) =>
    sensor.unread?.includes(key),
  );

/** Undefined without a sensor that has a coefficient: then the bound must hold for either sign. */
const signOf = (sensor: SensorType | undefined): 1 | -1 | 'unsigned' | undefined => {
  if (!hasCoefficient(sensor)) return undefined;
  if (sensor.coefficientSign !== 'signed') return 'unsigned';
  return sensor.coefficient < 0 ? -1 : 1;
};
