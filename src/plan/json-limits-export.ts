import { exactNumber } from './exact-number';
import { PURPOSES } from './fields';
import { ORIGIN_KEYS, originsOf } from './json-limits';
import type { JsonObject } from './json-record';
import { jsonScopedLimits } from './json-scoped-limits';
import type { Limits } from './limits';

/** The `common` part of a JSON plan: every limit with its number, and where it comes from when it is no default. */
export const jsonLimits = (limits: Limits): JsonObject => {
  const { signalToNoise, headroom, massRatio, thermalTolerance, spanTolerance } = limits;
  const pair = (pass: number, warn: number | undefined, passKey: string, warnKey: string, unit: 'dB' | '%') => ({
    [passKey]: exactNumber(pass, unit),
    ...(warn === undefined ? {} : { [warnKey]: exactNumber(warn, unit) }),
  });
  const origins = Object.fromEntries(
    ORIGIN_KEYS.flatMap((key) => {
      const origin = originsOf(limits, key);
      return origin === undefined ? [] : [[key, origin]];
    }),
  );
  return {
    calibration_temperature_degC: limits.calibrationTemperature,
    limits: {
      ...pair(signalToNoise.pass, signalToNoise.warn, 'signal_to_noise_pass_dB', 'signal_to_noise_warn_dB', 'dB'),
      ...pair(headroom.pass, headroom.warn, 'headroom_pass_dB', 'headroom_warn_dB', 'dB'),
      mass_ratio: Object.fromEntries(
        PURPOSES.map((purpose) => {
          const { pass, warn } = massRatio[purpose];
          return [purpose, { pass, ...(warn === undefined ? {} : { warn }) }];
        }),
      ),
      thermal_tolerance_percent: exactNumber(thermalTolerance.pass, '%'),
      ...pair(spanTolerance.pass, spanTolerance.warn, 'span_tolerance_percent', 'wide_span_tolerance_percent', '%'),
      ...(Object.keys(origins).length > 0 ? { origins } : {}),
      ...(limits.scoped ? { for_some: jsonScopedLimits(limits.scoped) } : {}),
    },
  };
};
