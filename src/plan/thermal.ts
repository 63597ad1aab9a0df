import { halfBand, thermalBand, worstDeviation, type Band, type ThermalResponse } from '../core/thermal/band';
import { thermalVerdict, worstVerdict, type Verdict } from '../core/verdict';
import { ROW_ORIGIN, type Bound, type Limits } from './limits';
import { Missing, missingField, type MissingField } from './missing';
import type { Channel, SensorType } from './model';

export type LimitedPart = 'sensor' | 'mount' | 'cable';

/** A needed temperature beyond the operating limit of a part, °C. */
export interface Excess {
  readonly part: LimitedPart;
  readonly name?: string;
  readonly end: 'low' | 'high';
  readonly needed: number;
  readonly limit: number;
}

export interface ThermalCheck {
  readonly band?: Band;
  readonly worst?: number;
  readonly halfBand?: number;
  /** Undefined while it cannot be said. */
  readonly isInsideLimits?: boolean;
  readonly excesses: readonly Excess[];
  /** A temperature that the deviation curve does not reach, °C. */
  readonly beyondCurve?: { readonly needed: number; readonly from: number; readonly to: number };
  readonly isReversed: boolean;
  /** Absent when the row's own could not be read. */
  readonly tolerance?: Bound;
  readonly missing: readonly MissingField[];
  readonly verdict: Verdict;
}

const SENSOR = missingField('channels', 'sensor');
const LOW = missingField('channels', 'temperatureLow');
const HIGH = missingField('channels', 'temperatureHigh');
const MIN = missingField('sensors', 'temperatureMin');
const MAX = missingField('sensors', 'temperatureMax');
const DEVIATION = missingField('sensors', 'deviation');

/** Where a blank means a default, a text that cannot be read must not. */
const OF_ROW = { thermalTolerance: missingField('channels', 'thermalTolerance') };
const OF_SENSOR = {
  deviation: DEVIATION,
  coefficient: missingField('sensors', 'coefficient'),
  coefficientSign: missingField('sensors', 'coefficientSign'),
  calibrationTemperature: missingField('sensors', 'calibrationTemperature'),
};
const OF_MOUNT = {
  temperatureMin: missingField('mounts', 'mountTemperatureMin'),
  temperatureMax: missingField('mounts', 'mountTemperatureMax'),
};
const OF_CABLE = {
  temperatureMin: missingField('cables', 'cableTemperatureMin'),
  temperatureMax: missingField('cables', 'cableTemperatureMax'),
};

const NO_EXCESS: readonly Excess[] = [];

export const checkThermal = (channel: Channel, limits: Limits): ThermalCheck => {
  const missing = new Missing();
  const { requirement, sensor, mount, cable } = channel;
  const low = missing.need(requirement.temperatureLow, LOW);
  const high = missing.need(requirement.temperatureHigh, HIGH);
  const isReversed = low !== undefined && high !== undefined && low > high;
  missing.need(sensor?.temperatureMin, sensor ? MIN : SENSOR);
  missing.need(sensor?.temperatureMax, sensor ? MAX : SENSOR);
  const isToleranceUnread = missing.unread(requirement, OF_ROW);
  const areLimitsUnread = [missing.unread(mount, OF_MOUNT), missing.unread(cable, OF_CABLE)].includes(true);
  const isResponseUnread = missing.unread(sensor, OF_SENSOR);
  const response = sensor && !isResponseUnread ? responseOf(sensor) : undefined;
  if (!isResponseUnread) missing.need(response, sensor ? DEVIATION : SENSOR);

  const calibration = sensor?.calibrationTemperature ?? limits.calibrationTemperature;
  const given =
    response && low !== undefined && high !== undefined && !isReversed
      ? thermalBand(response, low, high, calibration)
      : undefined;
  const band = given?.ok ? given.value : undefined;
  const curve = sensor?.deviation;
  const tolerance = isToleranceUnread ? undefined : rowBound(requirement.thermalTolerance, limits.thermalTolerance);
  const excesses = excessesOf({ low, high }, { sensor, mount, cable });
  const verdict = thermalVerdict({
    band,
    tolerance: tolerance?.pass,
    needed: { min: low, max: high },
    sensor: limitsOf(sensor),
    others: [limitsOf(mount), limitsOf(cable)],
  });
  const canSay = low !== undefined && high !== undefined && sensor?.temperatureMin !== undefined;
  return {
    band,
    worst: band && worstDeviation(band),
    halfBand: band && halfBand(band),
    isInsideLimits: excesses.length > 0 ? false : canSay && sensor?.temperatureMax !== undefined ? true : undefined,
    excesses,
    beyondCurve:
      given && !given.ok && given.issue.code === 'beyond-data' && curve
        ? { needed: given.issue.given, from: curve.x[0] ?? NaN, to: curve.x[curve.x.length - 1] ?? NaN }
        : undefined,
    isReversed,
    tolerance,
    missing: missing.fields,
    verdict: areLimitsUnread ? worstVerdict([verdict, 'INCOMPLETE']) : verdict,
  };
};

/** A row's own value in place of the plan's. */
export const rowBound = (own: number | undefined, bound: Bound): Bound =>
  own === undefined ? bound : { ...bound, pass: own, origin: ROW_ORIGIN };

/** What is known of a sensor's sensitivity over temperature. */
export const responseOf = (sensor: SensorType): ThermalResponse | undefined =>
  sensor.deviation ??
  (sensor.coefficient === undefined
    ? undefined
    : { perKelvin: sensor.coefficient, sign: sensor.coefficientSign ?? 'unsigned' });

/** A part with its operating limits, °C; a blank one does not limit. */
export interface Rated {
  readonly name?: string;
  readonly temperatureMin?: number;
  readonly temperatureMax?: number;
}

const limitsOf = (part: Rated | undefined) => ({ min: part?.temperatureMin, max: part?.temperatureMax });

/** The needed temperatures, °C, that lie beyond an operating limit of a part. */
export const excessesOf = (
  { low, high }: { readonly low?: number; readonly high?: number },
  { sensor, mount, cable }: Readonly<Partial<Record<LimitedPart, Rated>>>,
): readonly Excess[] => {
  const coldest = Math.min(low ?? Infinity, high ?? Infinity);
  const hottest = Math.max(low ?? -Infinity, high ?? -Infinity);
  let found = NO_EXCESS;
  found = withExcess(found, 'sensor', sensor, coldest, hottest);
  found = withExcess(found, 'mount', mount, coldest, hottest);
  return withExcess(found, 'cable', cable, coldest, hottest);
};

const withExcess = (
  found: readonly Excess[],
  part: LimitedPart,
  rated: Rated | undefined,
  coldest: number,
  hottest: number,
): readonly Excess[] => {
  const min = rated?.temperatureMin ?? -Infinity;
  const max = rated?.temperatureMax ?? Infinity;
  if (!rated || (coldest >= min && hottest <= max)) return found;
  const below: readonly Excess[] =
    coldest < min ? [{ part, name: rated.name, end: 'low', needed: coldest, limit: min }] : NO_EXCESS;
  const above: readonly Excess[] =
    hottest > max ? [{ part, name: rated.name, end: 'high', needed: hottest, limit: max }] : NO_EXCESS;
  return [...found, ...below, ...above];
};
