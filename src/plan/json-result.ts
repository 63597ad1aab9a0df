import { fromSi, type UnitId } from '../core/units';
import type { ChannelCheck } from './check';
import type { Finding } from './finding';
import { findingsOf } from './findings';
import type { LevelCheck } from './level';
import type { Limits } from './limits';
import { missingLabel } from './missing';
import type { ChannelSpan } from './span-memory';

type JsonValue = number | string | boolean | null | readonly JsonValue[] | { readonly [key: string]: JsonValue };
export type JsonResult = Readonly<Record<string, JsonValue>>;

const shown = (si: number | undefined, unit: UnitId): number | null => (si === undefined ? null : fromSi(si, unit));
const CEILING_WORDS = { 'amplifier output': 'charge amplifier output' } as Partial<Record<string, string>>;
const ceilingWord = (cause: string): string => CEILING_WORDS[cause] ?? cause;

/** One channel's numbers and verdicts under keys that carry their units; null where a number is not known or a span is empty. */
export const jsonResult = (check: ChannelCheck, limits: Limits): JsonResult => ({
  level: levelResult(check.level, check.channel.sensor?.output === 'charge'),
  mass: massResult(check),
  thermal: thermalResult(check),
  frequency: frequencyResult(check),
  verdict: check.verdict,
  reasons: findingsOf(check, limits).flatMap((finding) => (finding.verdict === 'PASS' ? [] : reasonWords(finding))),
});

/** Fixed words, for reading; the numbers and verdicts are what counts. */
const reasonWords = (finding: Finding): readonly string[] => {
  switch (finding.check) {
    case 'signal to noise':
      return ['noise'];
    case 'headroom':
      return (finding.causes?.slice(0, 1) ?? []).map((cause) => `upper limit: ${ceilingWord(cause)}`);
    case 'mass ratio':
      return ['mass loading'];
    case 'thermal deviation':
      return ['thermal band'];
    case 'span low':
      return ['frequency low end'];
    case 'span high':
      return ['frequency high end'];
    case 'missing':
      return finding.fields.map((field) => `missing: ${missingLabel(field)}`);
    default:
      return [finding.check];
  }
};

const levelResult = (level: LevelCheck, isCharge: boolean): JsonResult => {
  const unit = isCharge ? 'pC/g' : 'mV/g';
  const suffix = isCharge ? 'pC_per_gn' : 'mV_per_gn';
  return {
    [`sensitivity_min_${suffix}`]: shown(level.sensitivityMin, unit),
    [`sensitivity_max_${suffix}`]: shown(level.sensitivityMax, unit),
    noise_rms_gn: shown(level.noise, 'g'),
    signal_to_noise_dB: shown(level.signalToNoise, 'dB'),
    upper_limit_gn: shown(level.ceiling?.value, 'g'),
    limiting_term: level.ceiling ? ceilingWord(level.ceiling.limiting) : null,
    also_limiting: level.ceiling?.alsoLimiting.map(ceilingWord) ?? [],
    headroom_dB: shown(level.headroom, 'dB'),
    range_needed_dB: shown(level.rangeNeeded, 'dB'),
    range_available_dB: shown(level.rangeAvailable, 'dB'),
    rests_on_reference_sensitivity: level.restsOnReferenceSensitivity,
    verdict_low_end: level.lowEnd,
    verdict_high_end: level.highEnd,
    verdict: level.verdict,
  };
};

const massResult = ({ mass }: ChannelCheck): JsonResult => ({
  total_gram: shown(mass.total, 'gram'),
  local_mass_gram: shown(mass.localMass, 'gram'),
  governing_model: mass.model ?? null,
  mass_ratio: shown(mass.ratio, '1'),
  level_effect_percent: shown(mass.levelEffect, '%'),
  phase_deg: shown(mass.phase, 'deg'),
  frequency_shift_percent: shown(mass.frequencyShift, '%'),
  allowed_sensor_mass_gram: shown(mass.allowed, 'gram'),
  verdict: mass.verdict,
});

const thermalResult = ({ thermal }: ChannelCheck): JsonResult => ({
  low_percent: shown(thermal.band?.low, '%'),
  high_percent: shown(thermal.band?.high, '%'),
  worst_percent: shown(thermal.worst, '%'),
  half_band_percent: shown(thermal.halfBand, '%'),
  inside_limits: thermal.isInsideLimits ?? null,
  verdict: thermal.verdict,
});

const frequencyResult = ({ frequency }: ChannelCheck): JsonResult => {
  const { tolerance, caps } = frequency;
  const wide = Math.max(tolerance.pass, tolerance.warn ?? tolerance.pass);
  return {
    mounted_resonance_Hz: shown(frequency.mountedResonance, 'Hz'),
    low_poles_Hz: frequency.lowPoles ?? null,
    caps_Hz: Object.fromEntries(Object.entries(caps).map(([cause, hertz]) => [cause, hertz ?? null])),
    [spanKey(wide)]: spanResult(frequency.wide),
    [spanKey(tolerance.pass)]: spanResult(frequency.span),
    empty: frequency.span === null,
    verdict: frequency.verdict,
  };
};

const spanKey = (tolerance: number): string => `span_${Number((tolerance * 100).toPrecision(12))}_percent`;

const spanResult = (span: ChannelSpan | null | undefined): JsonValue =>
  span ? { low_Hz: span.low, high_Hz: span.high, high_limited_by: span.highLimitedBy } : null;
