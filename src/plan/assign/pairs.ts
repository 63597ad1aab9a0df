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

/** All types on all channels, one step per type and different demand. Channels that are kept change no part they name. */
export function* pairSteps(
  channels: readonly Channel[],
  stock: Stock,
  limits: Limits,
  free: readonly Part[] = [],
  isKept: (channel: Channel) => boolean = () => false,
): Generator<{ readonly done: number; readonly of: number }, readonly ChannelPairs[]> {
  const demands = demandsOf(channels);
  const memory = new CheckMemory();
  const work = { checked: 0 };
  const pairs = new Array<ChannelPairs>(channels.length);
  for (const [done, { channel, channels: places }] of demands.entries()) {
    const stays = (place: number): boolean => free.length > 0 && isKept(channels[place]!);
    const parts = [
      { mayChange: free, own: places.filter((place) => !stays(place)) },
      { mayChange: [], own: places.filter(stays) },
    ];
    for (const { mayChange, own } of parts) {
      if (own.length === 0) continue;
      const choices = partChoices(channel, stock, mayChange);
      const found: (Pair | undefined)[] = [];
      for (const sensor of stock.sensors) {
        const fit = bestFit(channel, sensor, choices, limits, memory, work);
        found.push(fit && { combination: fit.combination, verdict: fit.check.verdict, margin: fit.margin });
        yield { done, of: demands.length };
      }
      for (const place of own) pairs[place] = found;
    }
  }
  return pairs;
}
