import { VERDICTS } from '../../core/verdict';
import type { Stock } from '../choosing/candidate';
import type { InputMode } from '../fields';
import type { Limits } from '../limits';
import type { Channel } from '../model';
import { nothingAssigned, type Assigned, type Assignment, type Missing, type ShortageList, type TypeUse, type Unserved } from './assignment'; // prettier-ignore
import { sensorAxes, siteAxes, type SiteAxis } from './axes';
import type { Answer } from './formulate';
import type { AssignOptions } from './options';
import { pairSteps, type ChannelPairs } from './pairs';
import { numberPieces } from './pieces';
import { pinnedPlaces, planProblem, weightsOf } from './plan-problem';
import type { AssignProblem } from './problem';
import { findShortage, sizeOf, type Addition } from './shortage';
import { solveProblem } from './solve';
import type { SolveOptions, Solver } from './solver';
import { poolPieces, wishOf } from './hand-out-pieces';
import { countStock, type StockCount } from './stock-pools';
import { withTestEnd } from './test-end';
import { costTerms } from './terms';

/** Gives the channels sensors from the stock, as many channels as can be and at the least cost, proven where time allows. */
export const assignChannels = async (
  channels: readonly Channel[],
  stock: Stock,
  limits: Limits,
  solver: Solver,
  asked: AssignOptions = {},
): Promise<Assignment> => {
  const options = withTestEnd(channels, asked);
  const { signal, onProgress, timeLimit, testEnd } = options;
  const pinned = pinnedPlaces(channels, options);
  const counted = countStock(
    stock.sensors,
    options,
    channels.filter((_, place) => pinned.has(place)),
  );
  const nothing = (status: Assignment['status']) => nothingAssigned(status, channels, counted.isUnlimited);
  const pairs = judged(channels, stock, limits, options);
  if (!pairs) return nothing('cancelled');
  const sites = siteAxes(channels);
  const whole = planProblem(channels, stock, pairs, counted, sites, options);
  // Channels that no type fits are known to stay without; the solver need not see them.
  const kept = channels.flatMap((_, i) => (whole.places[i]!.costs.size > 0 ? [i] : []));
  const problem: AssignProblem = { ...whole, places: kept.map((i) => whole.places[i]!) };
  const solving: SolveOptions = { signal, timeLimit, onProgress: (p) => onProgress?.({ step: 'solving', gap: gapOf(p.best, p.bound) }) }; // prettier-ignore
  onProgress?.({ step: 'solving' });
  const found = await solveProblem(problem, solver, solving);
  if (found.status !== 'solved') return nothing(found.status);

  const { answer } = found;
  const assigned = assignedOf(answer, kept, { channels, stock, pairs, sites, counted, options });
  const unserved = [
    ...answer.unserved.map((i): Unserved => ({ channel: kept[i]!, why: 'stock' })),
    ...channels.flatMap((_, i) => (whole.places[i]!.costs.size > 0 ? [] : [hopeless(i, stock, pairs[i]!, whole.places[i]!.isKept === true)])), // prettier-ignore
  ].sort((a, b) => a.channel - b.channel);
  const wanted = options.shortage !== false && answer.unserved.length > 0;
  if (wanted) onProgress?.({ step: 'shortage' });
  const shortage = wanted
    ? listed(await findShortage(problem, answer.unserved, solver, { signal, timeLimit }), problem, stock)
    : undefined;
  if (signal?.aborted) return nothing('cancelled');
  const isOverdue = (pool: number) => counted.pools[pool]!.isOverdue;
  const terms = costTerms(problem, answer, assigned, stock.sensors, isOverdue, weightsOf(options));
  const cost = terms.reduce((sum, term) => sum + term.cost, 0);
  return {
    status: 'solved',
    channels,
    assigned,
    unserved,
    uses: usesOf(problem, answer, stock, counted),
    shortage,
    terms,
    cost,
    isOptimal: found.isOptimal,
    isFewest: found.isFewest,
    gap: found.isOptimal ? undefined : gapOf(cost, found.bound),
    isUnlimited: counted.isUnlimited,
    testEnd,
    runs: problem.slots,
  };
};

const gapOf = (best: number | undefined, bound: number | undefined): number | undefined =>
  best === undefined || bound === undefined || !Number.isFinite(best) ? undefined : Math.max(0, best - bound) / Math.max(1e-9, Math.abs(best)); // prettier-ignore

const judged = (
  channels: readonly Channel[],
  stock: Stock,
  limits: Limits,
  options: AssignOptions,
): readonly ChannelPairs[] | undefined => {
  const { free, signal, onProgress } = options;
  const steps = pairSteps(channels, stock, limits, free, pinnedPlaces(channels, options));
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    if (signal?.aborted) return undefined;
    onProgress?.({ step: 'judging', ...step.value });
  }
};

interface Context {
  readonly channels: readonly Channel[];
  readonly stock: Stock;
  readonly pairs: readonly ChannelPairs[];
  readonly sites: readonly (SiteAxis | undefined)[];
  readonly counted: StockCount;
  readonly options: AssignOptions;
}

const assignedOf = (
  { housings }: Answer,
  kept: readonly number[],
  { channels, stock, pairs, sites, counted, options }: Context,
): readonly Assigned[] => {
  const pinned = pinnedPlaces(channels, options);
  const known = poolPieces(counted.pools);
  const wishes = housings.map(({ pool, places }) => {
    const own = places.map((i) => ({ channel: channels[kept[i]!]!, isKept: pinned.has(kept[i]!) }));
    return wishOf(known[pool], stock.sensors[counted.pools[pool]!.sensor]!, own);
  });
  const pieces = numberPieces(housings, wishes, counted.pools.map(({ serials }) => serials?.length ?? Infinity)); // prettier-ignore
  const assigned = housings.flatMap(({ pool: p, places }, h): Assigned[] => {
    const pool = counted.pools[p]!;
    const before = counted.pools.slice(0, p).filter(({ sensor }) => sensor === pool.sensor);
    const first = before.reduce((sum, { count }) => sum + count, 0);
    const piece = pieces[h]!;
    const own = places.map((i) => kept[i]!);
    const axes =
      (stock.sensors[pool.sensor]!.axes ?? 1) > 1 && own.every((i) => sites[i])
        ? sensorAxes(own.map((i) => sites[i]!))
        : undefined;
    return own.map((channel, n) => {
      const { combination, verdict, margin } = pairs[channel]![pool.sensor]!;
      return {
        channel,
        combination,
        verdict,
        margin,
        piece: first + piece + 1,
        serial: (pinned.has(channel) ? channels[channel]!.serial : undefined) ?? pool.serials?.[piece],
        axis: axes?.[n],
        isPinned: pinned.has(channel),
        isOverdue: pool.isOverdue,
      };
    });
  });
  return assigned.sort((a, b) => a.channel - b.channel);
};

const hopeless = (channel: number, { sensors }: Stock, own: ChannelPairs, isPinned: boolean): Unserved => {
  if (isPinned) return { channel, why: 'not listed' };
  let nearest: Unserved['nearest'];
  let margin = -Infinity;
  own.forEach((pair, i) => {
    if (!pair) return;
    const better = nearest ? VERDICTS.indexOf(pair.verdict) - VERDICTS.indexOf(nearest.verdict) : -1;
    if (better > 0 || (better === 0 && (pair.margin ?? -Infinity) <= margin)) return;
    nearest = { sensor: sensors[i]!, verdict: pair.verdict };
    margin = pair.margin ?? -Infinity;
  });
  return { channel, why: 'nothing fits', nearest };
};

const usesOf = (
  { pools, slots }: AssignProblem,
  { housings }: Answer,
  { sensors }: Stock,
  { types }: StockCount,
): readonly TypeUse[] =>
  sensors.map((sensor, type): TypeUse => {
    const own = housings.filter(({ pool }) => pools[pool]!.type === type);
    const perRun = Array.from(
      { length: slots },
      (_, slot) => own.filter(({ slots: { first, last } }) => first <= slot && slot <= last).length,
    );
    const used = Math.max(0, ...perRun);
    const { quantity, kept, overdue, late, beyond } = types[type]!;
    const channels = own.reduce((sum, housing) => sum + housing.places.length, 0);
    const left = quantity === undefined ? undefined : Math.max(0, quantity + beyond - kept - overdue - used);
    return { sensor, quantity, kept, overdue, late, used, channels, left };
  });

const listed = (
  { fewest, alone, isProven }: { fewest?: Addition; alone: readonly Addition[]; isProven: boolean },
  { pools }: AssignProblem,
  { sensors }: Stock,
): ShortageList => {
  const missing = (addition: Addition): Missing[] => {
    const byType = new Map<number, number>();
    for (const [p, n] of addition.pools) byType.set(pools[p]!.type, (byType.get(pools[p]!.type) ?? 0) + n);
    return [
      ...[...byType].map(([type, count]): Missing => ({ kind: 'sensor', sensor: sensors[type]!, count })),
      ...[...addition.inputs].map(([mode, count]: [InputMode, number]): Missing => ({ kind: 'input', mode, count })),
    ];
  };
  const single = new Map<unknown, Missing>();
  for (const addition of [...alone].sort((a, b) => sizeOf(a) - sizeOf(b)))
    for (const one of missing(addition)) {
      const key = one.kind === 'sensor' ? one.sensor : one.mode;
      if (!single.has(key)) single.set(key, one);
    }
  return { fewest: fewest ? missing(fewest) : [], alone: [...single.values()], isProven };
};
