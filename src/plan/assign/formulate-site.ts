import type { Goal } from './formulate';
import type { Entry, InputRows, MixingRows, StockRows } from './formulate-rows';
import type { ModelBuilder } from './model-builder';
import type { AssignProblem } from './problem';
import type { SiteClass } from './sites';

/** Columns of a pool whose housings may serve several members of a site. */
interface Shared {
  readonly pieces: number;
  readonly members: readonly (number | undefined)[];
}
export interface ClassColumns {
  readonly sites: SiteClass;
  /** Per member: column by pool, for a housing of its own. */
  readonly single: readonly ReadonlyMap<number, number>[];
  readonly shared: ReadonlyMap<number, Shared>;
}

interface Context {
  readonly problem: AssignProblem;
  readonly goal: Goal;
  readonly build: ModelBuilder;
  readonly stock: StockRows;
  readonly inputs: InputRows;
  readonly mixing: MixingRows | undefined;
  /** Row that counts channels left out. */
  readonly total: number | undefined;
  readonly isWhole: boolean;
}

const ones = (rows: readonly (number | undefined)[]): Entry[] =>
  rows.flatMap((row): Entry[] => (row === undefined ? [] : [[row, 1]]));

/** Rows and columns of one class of sites. */
export const siteColumns = (sites: SiteClass, context: Context): ClassColumns => {
  const { problem, goal, build, stock, inputs, mixing, total, isWhole } = context;
  const { count, members, axes, slots, group } = sites;
  const costsOf = members.map(([first]) => problem.places[first!]!.costs);
  const served = members.map(() => build.row(count, count));
  const single = costsOf.map((costs, d) => {
    const columns = [...costs].map(([p, cost]): [number, number] => {
      const { mode, pieceCost } = problem.pools[p]!;
      const rows = ones([served[d], ...inputs.during(mode, slots), ...stock.during(p, slots)]);
      const entries = [...rows, ...(mixing?.link(group, p, count) ?? [])];
      return [p, build.column(goal.costs ? cost + pieceCost : 0, count, isWhole, entries)];
    });
    return new Map(columns);
  });
  const sharable = problem.pools.flatMap((pool, p) => {
    const reach = new Set(axes.filter((_, d) => costsOf[d]!.has(p)));
    return pool.axes > 1 && reach.size > 1 ? [p] : [];
  });
  // Equal sites are told apart afterwards, which takes that each has one shared housing at most.
  const housings = sharable.length > 1 && count > 1 ? build.row(-Infinity, count) : undefined;
  const shared = new Map(sharable.map((p) => [p, sharedColumns(p, sites, context, served, housings)]));
  if (goal.unserved !== 'none')
    members.forEach(([first], d) => {
      const { isKept, unservedCost } = problem.places[first!]!;
      // To serve all others in its stead would still cost more.
      const single = isKept ? 1 + problem.places.length : 1;
      const price = goal.unserved === 'fewest' ? single : goal.costs ? unservedCost : 0;
      build.column(price, count, isWhole, ones([served[d], total]));
    });
  return { sites, single, shared };
};

/** A housing serves no two members on one axis, nor more than it has axes. */
const sharedColumns = (
  p: number,
  { count, members, axes, slots, group }: SiteClass,
  { problem, goal, build, stock, inputs, mixing, isWhole }: Context,
  served: readonly number[],
  housings: number | undefined,
): Shared => {
  const { axes: width, mode, pieceCost } = problem.pools[p]!;
  const perAxis = new Map(axes.map((axis) => [axis, build.row(-Infinity, 0)]));
  const all = perAxis.size > width ? build.row(-Infinity, 0) : undefined;
  const most = count === 1 ? members.length : count;
  const pieces = build.column(goal.costs ? pieceCost : 0, most, true, [
    ...ones([...stock.during(p, slots), housings]),
    ...[...perAxis.values()].map((row): Entry => [row, -1]),
    ...(all === undefined ? [] : [[all, -width] as const]),
    ...(mixing?.link(group, p, most) ?? []),
  ]);
  const columns = members.map(([first], d) => {
    const cost = problem.places[first!]!.costs.get(p);
    if (cost === undefined) return undefined;
    const rows = [served[d], ...inputs.during(mode, slots), perAxis.get(axes[d]!), all];
    return build.column(goal.costs ? cost : 0, count, isWhole, ones(rows));
  });
  return { pieces, members: columns };
};
