import { amplitudeRatio } from '../../core/level/margin';
import { checkChannel } from '../check';
import { CheckMemory } from '../check-memory';
import type { Limits } from '../limits';
import type { Channel } from '../model';
import { withCombination, type Aim, type Combination } from './candidate';
import { withBandHigh } from './relax-knobs';
import { bitsOf, trialsOf, type Accept, type Trial } from './relax-trials';

/** One way to take a half, with what it adds and how far it reaches. */
export interface Half {
  readonly channel: Channel;
  readonly combination: Combination;
  /** kg. */
  readonly mass: number;
  /** m/s²: lowest r.m.s. level of a high half, highest peak of a low half. */
  readonly reach: number;
}

/** What the low half gives up beside its upper levels. */
export type Narrowing = 'one line' | 'band high';
export interface Narrowed {
  readonly channel: Channel;
  readonly narrower: readonly Narrowing[];
}

/** High halves: everything holds but the lowest level, which starts where the noise lets it. */
export const highHalves = (channel: Channel, trials: readonly Trial[], limits: Limits) =>
  lightestByReach(
    reaching(channel, trials, ['signal to noise'], ({ level }) =>
      level.noise === undefined ? undefined : level.noise * amplitudeRatio(limits.signalToNoise.pass),
    ),
    (a, b) => a <= b,
  );

/** Low halves: everything holds but the highest level, which ends where the sensor or the input does. */
export const lowHalves = (channel: Channel, all: readonly Combination[], limits: Limits, accept: Accept) =>
  lightestByReach(
    reaching(atItsLowest(channel), trialsOf(atItsLowest(channel), all, limits, accept), ['headroom'], ({ level }) =>
      level.ceiling ? level.ceiling.value / amplitudeRatio(limits.headroom.pass) : undefined,
    ),
    (a, b) => a >= b,
  );

/** The peak counts for the cable too; a low half is not asked for the row's highest level. */
const atItsLowest = (channel: Channel): Channel => {
  const { requirement } = channel;
  return { ...channel, requirement: { ...requirement, levelHigh: requirement.levelLow } };
};

const reaching = (
  channel: Channel,
  trials: readonly Trial[],
  open: readonly Aim[],
  reachOf: (check: ReturnType<typeof checkChannel>) => number | undefined,
): readonly Half[] => {
  const mayMiss = bitsOf(open);
  return trials.flatMap(({ combination, check, unmet }) => {
    const reach = reachOf(check);
    const mass = check.mass.total;
    return (unmet & ~mayMiss) === 0 && reach !== undefined && mass !== undefined
      ? [{ channel, combination, mass, reach }]
      : [];
  });
};

/** Only halves that no lighter one of the same type out-reaches. */
const lightestByReach = (halves: readonly Half[], reachesAsFar: (a: number, b: number) => boolean): readonly Half[] => {
  const kept: Half[] = [];
  for (const half of [...halves].sort((a, b) => a.mass - b.mass))
    if (!kept.some((other) => isSameType(other, half) && reachesAsFar(other.reach, half.reach))) kept.push(half);
  return kept;
};

const isSameType = (a: Half, b: Half): boolean => a.combination.sensor === b.combination.sensor;

const LINE = 1;
/** The low band keeps at least an octave. */
const OCTAVE = 2;
const MOST_OCTAVES = 6;

/** The low half as asked, then read in one 1 Hz line, then in ever narrower bands, each with and without the line. */
export function* narrowedLow(channel: Channel): Generator<Narrowed> {
  const { requirement } = channel;
  const { bandLow, bandHigh, detector } = requirement;
  const isBand = detector.kind === 'band';
  const asLine = (of: Channel): Channel => ({
    ...of,
    requirement: { ...of.requirement, detector: { kind: 'line', lineSpacing: LINE } },
  });
  yield { channel, narrower: [] };
  if (isBand) yield { channel: asLine(channel), narrower: ['one line'] };
  if (bandLow === undefined || bandHigh === undefined) return;
  for (let octaves = 1; octaves <= MOST_OCTAVES; octaves++) {
    const edge = bandHigh / OCTAVE ** octaves;
    if (edge < bandLow * OCTAVE) return;
    const narrow = { ...channel, requirement: { ...requirement, ...withBandHigh(requirement, edge) } };
    yield { channel: narrow, narrower: ['band high'] };
    if (isBand) yield { channel: asLine(narrow), narrower: ['one line', 'band high'] };
  }
}

/** The half judged on the levels it finally takes. */
export const judgedHalf = ({ channel, combination }: Half, levels: { low: number; high: number }, limits: Limits) => {
  const requirement = { ...channel.requirement, levelLow: levels.low, levelHigh: levels.high };
  const asked = { ...channel, requirement };
  return { asked, check: checkChannel(withCombination(asked, combination), limits, new CheckMemory()) };
};
