import { amplitudeRatio, decibels } from '../../core/level/margin';
import type { Limits } from '../limits';
import { limitsFor } from '../limits-for';
import { governingLocalMass } from '../local-mass';
import type { Channel, Requirement } from '../model';
import { PARTS, type Fit, type Stock } from './candidate';
import { fitOf } from './rank-search';
import { bitsOf, combinationsFor, isAccepted, trialsOf, type StockOptions } from './relax-trials';
import {
  highHalves,
  judgedHalf,
  lowHalves,
  narrowedLow,
  type Half,
  type Narrowed,
  type Narrowing,
} from './split-halves';
import { chooseHandover, LEAST_OVERLAP, type Handover } from './split-handover';

/** Two ranges of level at one point: two sensors, or one sensor in two runs with other settings. */
export interface Split {
  readonly sensors: 1 | 2;
  readonly low: SplitHalf;
  readonly high: SplitHalf;
  /** dB of level that both ranges hold: top of the low one over bottom of the high one. */
  readonly overlap: number;
  /** Both sensors in the low half's band: a linking run with both mounted passes. */
  readonly linking: MassOfBoth;
  /** Both sensors in the high half's band. */
  readonly together: MassOfBoth;
  /** False: the low sensor comes off for the high run. */
  readonly mayStay: boolean;
}
export interface SplitHalf {
  /** The channel with the demand that this half was checked on. */
  readonly channel: Channel;
  readonly fit: Fit;
  /** What the half asks less than the row does, beside its levels. */
  readonly narrower: readonly Narrowing[];
}
export interface MassOfBoth {
  /** kg of both sensors with mounts and cables. */
  readonly total: number;
  /** kg. */
  readonly localMass: number;
  readonly ratio: number;
  readonly limit: number;
}
export interface SplitOptions extends StockOptions {
  /** Where to hand over; absent: in the middle of what both can read. */
  readonly handover?: Handover;
  /** One: the same sensor on the same mount in two runs. Two (default): different types. */
  readonly sensors?: Split['sensors'];
}

/**
 * Finds what in the stock takes the low and the high levels of one channel, with 10 dB in common and both
 * masses counted. Every part is free, for two new rows are written. Undefined when one row is enough, or no two are.
 */
export const splitLevels = (
  channel: Channel,
  stock: Stock,
  planLimits: Limits,
  { filter, accept = 'PASS', handover, sensors = 2 }: SplitOptions = {},
): Split | undefined => {
  const limits = limitsFor(channel, planLimits);
  const { levelLow, levelHigh, purpose = limits.purpose } = channel.requirement;
  if (levelLow === undefined || levelHigh === undefined || purpose === undefined) return undefined;
  const limit = limits.massRatio[purpose][accept === 'WARN' ? 'warn' : 'pass'] ?? limits.massRatio[purpose].pass;
  const trials = trialsOf(channel, combinationsFor(channel, stock, { filter, free: PARTS }), limits, accept);
  if (trials.some(({ check }) => isAccepted(check.verdict, accept))) return undefined;
  const highs = highHalves(channel, trials, limits);
  if (highs.length === 0) return undefined;
  const all = trials.filter(({ unmet }) => (unmet & ~HELPED) === 0).map(({ combination }) => combination);
  for (const narrowed of narrowedLow(channel)) {
    const lows = lowHalves(narrowed.channel, all, limits, accept);
    const pairs = lows.flatMap((low) =>
      highs.flatMap((high) => pairOf(low, high, { channel, narrowed, limit, sensors }) ?? []),
    );
    pairs.sort((a, b) => Number(b.mayStay) - Number(a.mayStay) || a.linking.total - b.linking.total);
    for (const pair of pairs) {
      const split = judgedPair(pair, { low: levelLow, high: levelHigh, handover }, narrowed, limits);
      if (split && isAccepted(split.low.fit.check.verdict, accept) && isAccepted(split.high.fit.check.verdict, accept))
        return split;
    }
  }
  return undefined;
};

/** What lower levels in a narrower band can help. */
const HELPED = bitsOf(['signal to noise', 'headroom', 'mass ratio', 'span high']);

interface Pair {
  readonly sensors: Split['sensors'];
  readonly low: Half;
  readonly high: Half;
  readonly linking: MassOfBoth;
  readonly together: MassOfBoth;
  readonly mayStay: boolean;
}

interface Pairing {
  readonly channel: Channel;
  readonly narrowed: Narrowed;
  readonly limit: number;
  readonly sensors: Split['sensors'];
}

/** Undefined when the two are too heavy together even in the low half's band. */
const pairOf = (low: Half, high: Half, { channel, narrowed, limit, sensors }: Pairing): Pair | undefined => {
  const { sensor, mount, cable, input } = low.combination;
  const other = high.combination;
  // With the same input as well it would be one run, read in two ways.
  const isOne = sensor === other.sensor && mount === other.mount && cable === other.cable && input !== other.input;
  if (sensors === 1 ? !isOne : sensor === other.sensor) return undefined;
  const total = isOne ? low.mass : low.mass + high.mass;
  const linking = massOfBoth(total, narrowed.channel.requirement, limit);
  const together = massOfBoth(total, channel.requirement, limit);
  if (!linking || !together || linking.ratio > limit) return undefined;
  return { sensors, low, high, linking, together, mayStay: together.ratio <= limit };
};

const massOfBoth = (total: number, { localMass }: Requirement, limit: number): MassOfBoth | undefined => {
  const local = governingLocalMass(localMass);
  return local?.complete ? { total, localMass: local.mass, ratio: total / local.mass, limit } : undefined;
};

const judgedPair = (
  { low, high, ...masses }: Pair,
  levels: { readonly low: number; readonly high: number; readonly handover?: Handover },
  { channel, narrower }: Narrowed,
  limits: Limits,
): Split | undefined => {
  const handover =
    levels.handover ?? chooseHandover(Math.max(high.reach, levels.low), Math.min(low.reach, levels.high));
  if (!handover) return undefined;
  const { lowTop, highFrom } = handover;
  if (lowTop < highFrom * amplitudeRatio(LEAST_OVERLAP) * (1 - ROUNDING)) return undefined;
  const lower = judgedHalf({ ...low, channel }, { low: levels.low, high: lowTop }, limits);
  const upper = judgedHalf(high, { low: highFrom, high: levels.high }, limits);
  return {
    low: { channel: lower.asked, fit: fitOf(low.combination, lower.check, limits), narrower },
    high: { channel: upper.asked, fit: fitOf(high.combination, upper.check, limits), narrower: [] },
    overlap: decibels(lowTop, highFrom),
    ...masses,
  };
};

const ROUNDING = 1e-9;
