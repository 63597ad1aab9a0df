import { decibels } from '../../core/level/margin';
import { HANN_NOISE_BANDWIDTH } from '../../core/level/noise';
import type { Limits } from '../limits';
import { limitsFor } from '../limits-for';
import { governingLocalMass } from '../local-mass';
import type { Channel, LocalMass, Requirement } from '../model';
import type { Aim } from './candidate';

/** Single figures of a demand that can be asked for less strictly. */
export const KNOBS = [
  'lowest level',
  'highest level',
  'band low',
  'band high',
  'temperature low',
  'temperature high',
  'thermal tolerance',
  'span tolerance',
  'mass ratio limit',
  'local mass',
  'line spacing',
] as const;
export type Knob = (typeof KNOBS)[number];

export interface Demanded {
  readonly channel: Channel;
  readonly limits: Limits;
}

/** How a figure is asked for less strictly: monotone from `from` to `end`, all in SI. */
export interface KnobRule {
  /** Aims that can become easier; the others never change. */
  readonly helps: readonly Aim[];
  /** Undefined when the demand has no such figure, or nothing to give. */
  readonly range: (given: Demanded) => { readonly from: number; readonly end: number } | undefined;
  readonly set: (given: Demanded, value: number) => Demanded;
  /** How much less is asked, in dB on the scale of the margins. */
  readonly size: (from: number, to: number, limits: Limits) => number;
}

/** Beyond these nobody would still call the reading a measurement: a third of the level lost, half of it, or a 1 Hz line. */
const MOST_TOLERANCE = 0.3;
const MOST_MASS_RATIO = 1;
const NARROWEST_LINE = 1;
/** Local mass of another point; 60 dB is a thousand times. */
const MOST_LOCAL_MASS = 1000;

const ratio = (from: number, to: number): number => Math.abs(decibels(to, from));
const between = (from: number | undefined, end: number | undefined) =>
  from === undefined || end === undefined || from === end ? undefined : { from, end };
const rising = (from: number | undefined, end: number | undefined) =>
  from !== undefined && end !== undefined && end > from ? { from, end } : undefined;
const asking = ({ channel, limits }: Demanded, change: Partial<Requirement>): Demanded => ({
  channel: { ...channel, requirement: { ...channel.requirement, ...change } },
  limits,
});
const purposeOf = ({ channel, limits }: Demanded) => channel.requirement.purpose ?? limits.purpose;
const excursion = (from: number, to: number, { calibrationTemperature: rest }: Limits): number =>
  to === rest ? Infinity : ratio(from - rest, to - rest);
const TEMPERATURE_AIMS: readonly Aim[] = [
  'temperature limit',
  'thermal deviation',
  'signal to noise',
  'headroom',
  'span high',
];

export const KNOB_RULES: Readonly<Record<Knob, KnobRule>> = {
  'lowest level': {
    helps: ['signal to noise'],
    range: ({ channel: { requirement: r } }) => rising(r.levelLow, r.levelHigh),
    set: (given, levelLow) => asking(given, { levelLow }),
    size: ratio,
  },
  'highest level': {
    helps: ['headroom', 'span high'],
    range: ({ channel: { requirement: r } }) => rising(r.levelLow, r.levelHigh) && between(r.levelHigh, r.levelLow),
    set: (given, levelHigh) => asking(given, { levelHigh }),
    size: ratio,
  },
  'band low': {
    helps: ['span low', 'signal to noise'],
    range: ({ channel: { requirement: r } }) => rising(r.bandLow, r.bandHigh),
    set: (given, bandLow) => asking(given, { bandLow }),
    size: (from, to) => (from > 0 ? ratio(from, to) : Infinity),
  },
  'band high': {
    helps: ['span high', 'signal to noise', 'mass ratio'],
    range: ({ channel: { requirement: r } }) => rising(r.bandLow, r.bandHigh) && between(r.bandHigh, Math.max(r.bandLow!, SMALLEST_BAND * r.bandHigh!)), // prettier-ignore
    set: (given, bandHigh) => asking(given, withBandHigh(given.channel.requirement, bandHigh)),
    size: ratio,
  },
  'temperature low': {
    helps: TEMPERATURE_AIMS,
    range: ({ channel: { requirement: r }, limits }) =>
      rising(r.temperatureLow, Math.min(r.temperatureHigh ?? NaN, limits.calibrationTemperature)),
    set: (given, temperatureLow) => asking(given, { temperatureLow }),
    size: excursion,
  },
  'temperature high': {
    helps: TEMPERATURE_AIMS,
    range: ({ channel: { requirement: r }, limits }) => {
      const end = Math.max(r.temperatureLow ?? NaN, limits.calibrationTemperature);
      return rising(end, r.temperatureHigh) && between(r.temperatureHigh, end);
    },
    set: (given, temperatureHigh) => asking(given, { temperatureHigh }),
    size: excursion,
  },
  'thermal tolerance': {
    helps: ['thermal deviation'],
    range: ({ channel, limits }) =>
      rising(channel.requirement.thermalTolerance ?? limitsFor(channel, limits).thermalTolerance.pass, MOST_TOLERANCE),
    set: (given, thermalTolerance) => asking(given, { thermalTolerance }),
    size: ratio,
  },
  'span tolerance': {
    helps: ['span low', 'span high'],
    range: ({ channel, limits }) =>
      rising(channel.requirement.spanTolerance ?? limitsFor(channel, limits).spanTolerance.pass, MOST_TOLERANCE),
    set: (given, spanTolerance) => asking(given, { spanTolerance }),
    size: ratio,
  },
  'mass ratio limit': {
    helps: ['mass ratio'],
    range: (given) => {
      const purpose = purposeOf(given);
      return purpose && rising(limitsFor(given.channel, given.limits).massRatio[purpose].pass, MOST_MASS_RATIO);
    },
    set: (given, massRatioLimit) => (purposeOf(given) ? asking(given, { massRatioLimit }) : given),
    size: ratio,
  },
  'local mass': {
    helps: ['mass ratio'],
    range: ({ channel }) => {
      const local = governingLocalMass(channel.requirement.localMass);
      return local?.complete && Number.isFinite(local.mass)
        ? { from: local.mass, end: local.mass * MOST_LOCAL_MASS }
        : undefined;
    },
    set: (given, mass) => asking(given, { localMass: [{ model: 'value', mass }] }),
    size: ratio,
  },
  'line spacing': {
    helps: ['signal to noise'],
    range: ({ channel: { requirement: r } }) => {
      const width = r.bandLow === undefined || r.bandHigh === undefined ? undefined : r.bandHigh - r.bandLow;
      const from = r.detector.kind === 'line' ? r.detector.lineSpacing : width && width / HANN_NOISE_BANDWIDTH;
      return from !== undefined && from > NARROWEST_LINE ? { from, end: NARROWEST_LINE } : undefined;
    },
    set: (given, lineSpacing) => asking(given, { detector: { kind: 'line', lineSpacing } }),
    size: (from, to) => ratio(from, to) / 2,
  },
};

const SMALLEST_BAND = 1e-3;

/**
 * A lower upper edge; the local mass of a plate or beam that was taken at the old edge follows to the new one. The
 * impedance of a plate does not depend on frequency, the magnitude of a beam's grows with its square root.
 */
export const withBandHigh = (requirement: Requirement, bandHigh: number): Partial<Requirement> => {
  const before = requirement.bandHigh;
  const moved = (branch: LocalMass): LocalMass => {
    if ((branch.model !== 'plate' && branch.model !== 'beam') || branch.frequency !== before) return branch;
    if (branch.model === 'plate' || branch.impedance === undefined) return { ...branch, frequency: bandHigh };
    return { ...branch, frequency: bandHigh, impedance: branch.impedance * Math.sqrt(bandHigh / before!) };
  };
  return { bandHigh, localMass: requirement.localMass.map(moved) };
};
