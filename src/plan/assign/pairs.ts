import type { Part, Stock } from '../choosing/candidate';
import { partChoices } from '../choosing/candidate-options';
import { demandsOf } from '../choosing/rank-demands';
import { CombinationSearch, type Best } from '../choosing/rank-search';
import type { Limits } from '../limits';
import type { Channel } from '../model';

/** A sensor type on a channel, with the mount, cable and input that suit it best there. */
export type Pair = Best;

/** Pairs of one channel by place of the type in the stock. Equal channels share one list. */
export type ChannelPairs = readonly (Pair | undefined)[];

/** All types on all channels, one step per type. Channels that are kept change no part they name. */
export function* pairSteps(
  channels: readonly Channel[],
  stock: Stock,
  limits: Limits,
  free: readonly Part[] = [],
  kept: ReadonlySet<number> = new Set(),
): Generator<{ readonly done: number; readonly of: number }, readonly ChannelPairs[]> {
  const search = new CombinationSearch(limits);
  const pairs = new Array<(Pair | undefined)[]>(channels.length);
  const jobs = demandsOf(channels, limits).flatMap(({ channel, channels: places }) => {
    const stays = (place: number): boolean => free.length > 0 && kept.has(place);
    const halves = [
      { mayChange: free, own: places.filter((place) => !stays(place)) },
      { mayChange: [], own: places.filter(stays) },
    ];
    return halves.flatMap(({ mayChange, own }) => {
      if (own.length === 0) return [];
      const found: (Pair | undefined)[] = [];
      for (const place of own) pairs[place] = found;
      return [{ asked: search.asked(channel), choices: partChoices(channel, stock, mayChange), found }];
    });
  });
  for (const [done, sensor] of stock.sensors.entries()) {
    yield { done, of: stock.sensors.length };
    for (const { asked, choices, found } of jobs) found.push(search.best(asked, sensor, choices));
    search.forget(sensor);
  }
  return pairs;
}
