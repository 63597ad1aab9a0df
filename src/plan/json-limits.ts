import { PURPOSES, type Purpose } from './fields';
import type { JsonObject, JsonReader } from './json-record';
import { DEFAULT_LIMITS, type Bound, type Limits } from './limits';

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
];

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
  for (const key of Object.keys(limits))
    if (!LIMIT_KEYS.includes(key))
      reader.report(`${path}.limits.${key}`, limits[key], `one of ${LIMIT_KEYS.join(', ')}`);

  const number = (from: JsonObject, key: string, at: string, unit: '1' | '%' | 'dB' = '1'): number | undefined =>
    from[key] === undefined || from[key] === null
      ? undefined
      : reader.number(from[key], `${at}.${key}`, unit, 'limits', '');
  const inLimits = (key: string, unit: '%' | 'dB') => number(limits, key, `${path}.limits`, unit);
  const ratios = reader.object(limits['mass_ratio'] ?? {}, `${path}.limits.mass_ratio`) ?? {};
  const massRatio = Object.fromEntries(
    PURPOSES.map((purpose) => {
      const at = `${path}.limits.mass_ratio.${purpose}`;
      const ratio = reader.object(ratios[purpose] ?? {}, at) ?? {};
      return [purpose, changed(defaults.massRatio[purpose], number(ratio, 'pass', at), number(ratio, 'warn', at))];
    }),
  ) as Record<Purpose, Bound>;
  return {
    ...defaults,
    calibrationTemperature: calibrationTemperature ?? defaults.calibrationTemperature,
    signalToNoise: changed(
      defaults.signalToNoise,
      inLimits('signal_to_noise_pass_dB', 'dB'),
      inLimits('signal_to_noise_warn_dB', 'dB'),
    ),
    headroom: changed(defaults.headroom, inLimits('headroom_pass_dB', 'dB'), inLimits('headroom_warn_dB', 'dB')),
    massRatio,
    thermalTolerance: changed(defaults.thermalTolerance, inLimits('thermal_tolerance_percent', '%'), undefined),
    spanTolerance: changed(
      defaults.spanTolerance,
      inLimits('span_tolerance_percent', '%'),
      inLimits('wide_span_tolerance_percent', '%'),
    ),
  };
};

/** A default that the plan repeats stays a default. */
export const changed = (bound: Bound, pass?: number, warn?: number, origin = PLAN_ORIGIN): Bound => {
  const next = { pass: pass ?? bound.pass, warn: warn ?? bound.warn };
  return next.pass === bound.pass && next.warn === bound.warn ? bound : { ...bound, ...next, origin };
};
