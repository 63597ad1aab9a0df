import { PURPOSES, type Purpose } from './fields';
import type { JsonObject, JsonReader } from './json-record';
import { readScopedLimits } from './json-scoped-limits';
import { DEFAULT_LIMITS, DEFAULT_ORIGIN, type Bound, type Limits } from './limits';

export const PLAN_ORIGIN = 'this plan';

const LIMIT_KEYS = [
  'signal_to_noise_pass_dB',
  'signal_to_noise_warn_dB',
  'headroom_pass_dB',
  'headroom_warn_dB',
  'mass_ratio',
  'thermal_tolerance_percent',
  'span_tolerance_percent',
  'wide_span_tolerance_percent',
  'band_edge_slack',
  'origins',
  'for_some',
];

/** Limits whose origin can be told in words, by the key under `origins`. */
export const ORIGIN_KEYS = [
  'signal_to_noise',
  'headroom',
  'mass_ratio_survey',
  'mass_ratio_modal',
  'mass_ratio_shock',
  'thermal_tolerance',
  'span_tolerance',
] as const;
type OriginKey = (typeof ORIGIN_KEYS)[number];

/** Why a limit has its value; undefined for a default, and where nothing more than "this plan" is known. */
export const originsOf = (limits: Limits, key: OriginKey): string | undefined => {
  const { origin } = boundFor(limits, key);
  return origin === DEFAULT_ORIGIN || origin === PLAN_ORIGIN ? undefined : origin;
};
const boundFor = ({ massRatio, ...limits }: Limits, key: OriginKey): Bound => {
  switch (key) {
    case 'signal_to_noise':
      return limits.signalToNoise;
    case 'headroom':
      return limits.headroom;
    case 'mass_ratio_survey':
      return massRatio.survey;
    case 'mass_ratio_modal':
      return massRatio.modal;
    case 'mass_ratio_shock':
      return massRatio.shock;
    case 'thermal_tolerance':
      return limits.thermalTolerance;
    case 'span_tolerance':
      return limits.spanTolerance;
  }
};

/** The `common` part of a JSON plan over the defaults. The slack of band edges is fixed and only accepted as 0.001. */
export const readJsonLimits = (reader: JsonReader, common: JsonObject): Limits => {
  const path = 'common';
  const defaults = DEFAULT_LIMITS;
  const temperature = common['calibration_temperature_degC'] ?? null;
  const calibrationTemperature =
    temperature === null
      ? undefined
      : reader.number(temperature, `${path}.calibration_temperature_degC`, '°C', 'sensors', 'calibrationTemperature');
  const limits = reader.object(common['limits'] ?? {}, `${path}.limits`) ?? {};
  reportUnknown(reader, limits, `${path}.limits`, LIMIT_KEYS);
  const inLimits = (key: string, unit: '%' | 'dB') => boundIn(reader, limits, key, `${path}.limits`, unit);
  const origin = originReader(reader, limits, `${path}.limits`);
  const scoped = readScopedLimits(reader, limits['for_some'], `${path}.limits.for_some`);
  return {
    ...defaults,
    ...(scoped.length > 0 && { scoped }),
    calibrationTemperature: calibrationTemperature ?? defaults.calibrationTemperature,
    signalToNoise: changed(
      defaults.signalToNoise,
      inLimits('signal_to_noise_pass_dB', 'dB'),
      inLimits('signal_to_noise_warn_dB', 'dB'),
      origin('signal_to_noise'),
    ),
    headroom: changed(
      defaults.headroom,
      inLimits('headroom_pass_dB', 'dB'),
      inLimits('headroom_warn_dB', 'dB'),
      origin('headroom'),
    ),
    massRatio: massRatios(reader, limits, `${path}.limits`, origin),
    thermalTolerance: changed(
      defaults.thermalTolerance,
      inLimits('thermal_tolerance_percent', '%'),
      undefined,
      origin('thermal_tolerance'),
    ),
    spanTolerance: changed(
      defaults.spanTolerance,
      inLimits('span_tolerance_percent', '%'),
      inLimits('wide_span_tolerance_percent', '%'),
      origin('span_tolerance'),
    ),
  };
};

const boundIn = (reader: JsonReader, from: JsonObject, key: string, at: string, unit: '1' | '%' | 'dB' = '1') =>
  from[key] === undefined || from[key] === null
    ? undefined
    : reader.number(from[key], `${at}.${key}`, unit, 'limits', '');

const massRatios = (
  reader: JsonReader,
  limits: JsonObject,
  path: string,
  origin: (key: OriginKey) => string | undefined,
): Limits['massRatio'] => {
  const ratios = reader.object(limits['mass_ratio'] ?? {}, `${path}.mass_ratio`) ?? {};
  const of = (purpose: Purpose): Bound => {
    const at = `${path}.mass_ratio.${purpose}`;
    const ratio = reader.object(ratios[purpose] ?? {}, at) ?? {};
    const [pass, warn] = [boundIn(reader, ratio, 'pass', at), boundIn(reader, ratio, 'warn', at)];
    return changed(DEFAULT_LIMITS.massRatio[purpose], pass, warn, origin(`mass_ratio_${purpose}`));
  };
  return Object.fromEntries(PURPOSES.map((purpose) => [purpose, of(purpose)])) as Record<Purpose, Bound>;
};

const reportUnknown = (reader: JsonReader, given: JsonObject, path: string, known: readonly string[]): void => {
  for (const key of Object.keys(given))
    if (!known.includes(key)) reader.report(`${path}.${key}`, given[key], `one of ${known.join(', ')}`);
};

const originReader = (reader: JsonReader, limits: JsonObject, path: string) => {
  const origins = reader.object(limits['origins'] ?? {}, `${path}.origins`) ?? {};
  reportUnknown(reader, origins, `${path}.origins`, ORIGIN_KEYS);
  return (key: OriginKey) => reader.text(origins[key], `${path}.origins.${key}`);
};

/** A default that the plan repeats stays a default. */
export const changed = (bound: Bound, pass?: number, warn?: number, origin = PLAN_ORIGIN): Bound => {
  const next = { pass: pass ?? bound.pass, warn: warn ?? bound.warn };
  return next.pass === bound.pass && next.warn === bound.warn ? bound : { ...bound, ...next, origin };
};
