import type { Verdict } from '../../core/verdict';
import { CheckMemory } from '../check-memory';
import type { Combination, Part, Stock } from '../choosing/candidate';
import { partChoices } from '../choosing/candidate-options';
import { demandsOf } from '../choosing/rank-demands';
import { bestFit } from '../choosing/rank-search';
import type { Limits } from '../limits';
import type { Channel } from '../model';

/** A sensor type on a channel, with the mount, cable and input that suit it best there. */
export interface Pair {
  readonly combination: Combination;
  readonly verdict: Verdict;
  /** dB; see `marginsOf`. */
  readonly margin?: number;
}

/** Pairs of one channel by place of the type in the stock. Equal channels share one list. */
export type ChannelPairs = readonly (Pair | undefined)[];

/** All types on all channels, one step per different demand. */
export function* pairSteps(
  channels: readonly Channel[],
  stock: Stock,
  limits: Limits,
  free?: readonly Part[],
): Generator<{ readonly done: number; readonly of: number }, readonly ChannelPairs[]> {
  const demands = demandsOf(channels);
  const memory = new CheckMemory();
  const work = { checked: 0 };
  const pairs = new Array<ChannelPairs>(channels.length);
  for (const [done, { channel, channels: places }] of demands.entries()) {
    const choices = partChoices(channel, stock, free);
    const own = stock.sensors.map((sensor): Pair | undefined => {
      const fit = bestFit(channel, sensor, choices, limits, memory, work);
      return fit && { combination: fit.combination, verdict: fit.check.verdict, margin: fit.margin };
    });
    for (const place of places) pairs[place] = own;
    yield { done: done + 1, of: demands.length };
  }
  return pairs;
}
