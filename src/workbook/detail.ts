import type { Band } from '../core/thermal/band';
import type { UnitId } from '../core/units';
import { UNITS } from '../core/units';
import { cautionsFor } from '../plan/cautions';
import type { ChannelCheck } from '../plan/check';
import { findingsOf } from '../plan/findings';
import type { Limits } from '../plan/limits';
import { inWords, signed } from '../plan/numbers-in-words';
import { sentenceOf } from '../plan/sentence';
import type { ChannelSpan } from '../plan/span-memory';
import type { Headline } from '../plan/finding';
import type { DetailLine, RowDetail } from './plan-view';
import { HEADLINES } from './results';

const NOT_KNOWN = 'not known';

const line = (label: string, si: number | undefined, unit: UnitId, digits = 3): DetailLine =>
  si === undefined
    ? { label, value: NOT_KNOWN, unit: '' }
    : { label, value: inWords(si, unit, digits), unit: UNITS[unit].label };
const band = (label: string, given: Band | undefined): DetailLine =>
  given
    ? { label, value: `${signed(given.low, '%')} to ${signed(given.high, '%')}`, unit: '%' }
    : { label, value: NOT_KNOWN, unit: '' };
const span = (label: string, given: ChannelSpan | null | undefined): DetailLine =>
  given
    ? { label, value: `${inWords(given.low, 'Hz')} to ${inWords(given.high, 'Hz', 4)}`, unit: 'Hz' }
    : { label, value: given === null ? 'empty' : NOT_KNOWN, unit: '' };

const LINES: Readonly<Record<Headline, (check: ChannelCheck) => readonly DetailLine[]>> = {
  level: ({ level, channel: { requirement } }) => [
    line('Lowest level, r.m.s.', requirement.levelLow, 'g'),
    line('Noise in the band, r.m.s.', level.noise, 'g'),
    line('Signal to noise', level.signalToNoise, 'dB'),
    line('Highest level, peak', requirement.levelHigh, 'g'),
    line(`Upper limit${level.ceiling ? ` (${level.ceiling.limiting})` : ''}`, level.ceiling?.value, 'g'),
    line('Headroom', level.headroom, 'dB'),
    line('Range needed', level.rangeNeeded, 'dB'),
    line('Range available', level.rangeAvailable, 'dB'),
  ],
  mass: ({ mass }) => [
    line('Added mass', mass.total, 'gram'),
    line('Local mass', mass.localMass, 'gram', 4),
    line('Mass ratio', mass.ratio, '1'),
    line('Heaviest sensor that passes', mass.allowed, 'gram'),
    line('Effect on the level', mass.levelEffect, '%'),
    ...(mass.frequencyShift === undefined ? [] : [line('Effect on natural frequencies', mass.frequencyShift, '%')]),
  ],
  thermal: ({ thermal, channel: { requirement } }) => [
    {
      label: 'Temperature',
      value:
        requirement.temperatureLow === undefined || requirement.temperatureHigh === undefined
          ? NOT_KNOWN
          : `${inWords(requirement.temperatureLow, '°C')} to ${inWords(requirement.temperatureHigh, '°C')}`,
      unit: '°C',
    },
    band('Deviation', thermal.band),
    line('Left after scaling to the middle', thermal.halfBand, '%'),
  ],
  frequency: ({ frequency, channel: { requirement } }) => [
    {
      label: 'Band needed',
      value:
        requirement.bandLow === undefined || requirement.bandHigh === undefined
          ? NOT_KNOWN
          : `${inWords(requirement.bandLow, 'Hz')} to ${inWords(requirement.bandHigh, 'Hz', 4)}`,
      unit: 'Hz',
    },
    span(`Span at ±${inWords(frequency.tolerance.pass, '%')} %`, frequency.span),
    span(`Span at ±${inWords(frequency.tolerance.warn ?? frequency.tolerance.pass, '%')} %`, frequency.wide),
    line('Mounted resonance', frequency.mountedResonance, 'Hz'),
  ],
};

/** All numbers of one channel, what each finding says, and the cautions that the row calls for. */
export const detailOf = (check: ChannelCheck, limits: Limits): RowDetail => ({
  headlines: HEADLINES.map((name) => ({
    name,
    verdict: check[name].verdict,
    lines: LINES[name](check),
    sentences: findingsOf(check, limits, name).map(sentenceOf),
  })),
  cautions: cautionsFor([check]).map(({ caution }) => caution),
});
