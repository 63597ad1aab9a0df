import type { Stock } from '../choosing/candidate';
import { MODE_OF } from '../level';
import type { Channel } from '../model';
import { fromSi } from '../../core/units';
import type { SiteAxis } from './axes';
import { AMPLE_MARGIN, WEIGHTS, type AssignOptions, type Weights } from './options';
import type { ChannelPairs, Pair } from './pairs';
import type { AssignProblem, InputPool, Place, Pool, Slots } from './problem';
import type { StockCount } from './stock-pools';

const folded = (text: string | undefined): string => (text ?? '').trim().toLowerCase();

export const weightsOf = ({ weights }: AssignOptions): Weights => ({ ...WEIGHTS, ...weights });

/** Places of the channels that keep their sensor. One that names no sensor has nothing to keep. */
export const pinnedPlaces = (channels: readonly Channel[], { pinned }: AssignOptions): ReadonlySet<number> => {
  const asked = new Set((pinned === 'filled' ? [] : (pinned ?? [])).map((one) => (typeof one === 'number' ? one : folded(one)))); // prettier-ignore
  const isAsked = (id: string, place: number) => pinned === 'filled' || asked.has(place) || asked.has(folded(id));
  const found = channels.flatMap(({ id, sensor, named }, place) =>
    (sensor ?? named?.sensor) !== undefined && isAsked(id, place) ? [place] : [],
  );
  return new Set(found);
};

/** Thousandths are enough for costs, and equal costs make equal channels. */
const rounded = (cost: number): number => Math.round(cost * 1000) / 1000;

/** How thin a margin is, from 0 (ample) to 1; one that is not known counts as thin. Hundredths are enough. */
export const thinness = (margin: number | undefined): number =>
  margin === undefined ? 1 : Math.round(100 * Math.min(1, Math.max(0, 1 - margin / AMPLE_MARGIN))) / 100;

const pairCost = ({ verdict, margin }: Pair, weights: Weights): number =>
  rounded(
    weights.margin * thinness(margin) +
      (verdict === 'WARN' ? weights.warn : verdict === 'INCOMPLETE' ? weights.incomplete : 0),
  );

export const isAdmissible = ({ verdict }: Pair, { allowWarn, allowIncomplete }: AssignOptions): boolean =>
  verdict === 'PASS' || (verdict === 'WARN' && allowWarn === true) || (verdict === 'INCOMPLETE' && allowIncomplete === true); // prettier-ignore

/** Runs of the channels, and how many there are. */
export const runsOf = (
  channels: readonly Channel[],
  { roving, runs }: AssignOptions,
): { readonly slots: readonly Slots[]; readonly count: number } => {
  const byPart = new Map<string, Slots>([...(runs ?? [])].map(([part, slots]) => [folded(part), slots]));
  if (roving && !runs)
    for (const { group } of channels) {
      const part = folded(group);
      if (part !== '' && !byPart.has(part)) byPart.set(part, { first: byPart.size, last: byPart.size });
    }
  const count = [...byPart.values()].reduce((most, { last }) => Math.max(most, last + 1), 1);
  const always = { first: 0, last: count - 1 };
  return { slots: channels.map(({ group }) => byPart.get(folded(group)) ?? always), count };
};

/** Channels of one point that keep different pieces are not one housing; the first piece may serve others there. */
const sitesByPiece = (
  channels: readonly Channel[],
  sites: readonly (SiteAxis | undefined)[],
  pinned: ReadonlySet<number>,
): readonly (string | undefined)[] => {
  const first = new Map<string, string>();
  return sites.map((found, i) => {
    const serial = pinned.has(i) ? folded(channels[i]!.serial) : '';
    if (!found || serial === '') return found?.site;
    if (!first.has(found.site)) first.set(found.site, serial);
    return first.get(found.site) === serial ? found.site : `${found.site}\n${serial}`;
  });
};

/** The plan as a problem of pools and places. The places are the channels, in their order. */
export const planProblem = (
  channels: readonly Channel[],
  stock: Stock,
  pairs: readonly ChannelPairs[],
  { pools, types }: Pick<StockCount, 'pools' | 'types'>,
  sites: readonly (SiteAxis | undefined)[],
  options: AssignOptions,
): AssignProblem => {
  const weights = weightsOf(options);
  const { slots, count } = runsOf(channels, options);
  const pinned = pinnedPlaces(channels, options);
  const poolsOf = types.map((_, sensor) => pools.flatMap((pool, p) => (pool.sensor === sensor ? [p] : [])));
  const known = new Map<ChannelPairs, ReadonlyMap<number, number>>();
  const siteOf = sitesByPiece(channels, sites, pinned);
  const costsOf = (own: ChannelPairs, only?: number): ReadonlyMap<number, number> => {
    const before = only === undefined ? known.get(own) : undefined;
    if (before) return before;
    const costs = new Map<number, number>();
    own.forEach((pair, sensor) => {
      const isWanted = only === undefined ? pair && isAdmissible(pair, options) : sensor === only;
      if (pair && isWanted) for (const p of poolsOf[sensor]!) costs.set(p, pairCost(pair, weights));
    });
    if (only === undefined) known.set(own, costs);
    return costs;
  };
  return {
    slots: count,
    mixing: weights.mixing,
    inputs: options.inputs?.map(({ modes, channels: each, count: n }): InputPool => ({ modes, channels: each * n })),
    pools: pools.map(({ sensor, count: pieces, isOverdue }): Pool => {
      const { axes, mass, output } = stock.sensors[sensor]!;
      const grams = fromSi(mass ?? 0, 'gram');
      return {
        type: sensor,
        count: pieces,
        axes: Math.max(1, Math.floor(axes ?? 1)),
        pieceCost: rounded(weights.housing + weights.mass * grams + (isOverdue ? weights.calibration : 0)),
        mode: output && MODE_OF[output],
      };
    }),
    places: channels.map((channel, i): Place => {
      const keeps = channel.sensor ? stock.sensors.indexOf(channel.sensor) : -1;
      const isResponse = channel.role === undefined || channel.role === 'response';
      const group = isResponse && folded(channel.group) !== '' ? folded(channel.group) : undefined;
      return {
        slots: slots[i]!,
        group,
        site: siteOf[i],
        axis: sites[i]?.axis,
        unservedCost: (channel.role === 'control' ? weights.control : 0) + (pinned.has(i) ? weights.kept : 0),
        isKept: pinned.has(i),
        costs: costsOf(pairs[i]!, pinned.has(i) ? keeps : undefined),
      };
    }),
  };
};
