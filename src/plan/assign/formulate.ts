import type { InputMode } from '../fields';
import { inputRows, mixingRows, stockRows, type Entry } from './formulate-rows';
import { handOut, type ClassFlow } from './hand-out';
import { ModelBuilder } from './model-builder';
import type { AssignProblem, Housing } from './problem';
import { siteClasses, type SiteClass } from './sites';
import type { LinearModel } from './solver';

/** What is asked of the solver. */
export interface Goal {
  /** `none`: all must be served; `fewest`: count those left out; a number: exactly so many are left out. */
  readonly unserved: 'none' | 'fewest' | number;
  /** Costs of pairs, pieces and mixing count; otherwise only unserved channels and extra pieces do. */
  readonly costs: boolean;
  /** Pools and modes of which more pieces or input channels may be had than there are, at cost 1 each. */
  readonly extra?: { readonly pools: readonly number[]; readonly modes: readonly InputMode[] };
}

export interface Answer {
  readonly housings: readonly Housing[];
  readonly unserved: readonly number[];
  readonly extraPieces: ReadonlyMap<number, number>;
  readonly extraInputs: ReadonlyMap<InputMode, number>;
}

export interface Formulation {
  readonly model: LinearModel;
  /** What the column values mean. */
  answer(values: ArrayLike<number>): Answer;
}

interface Shared {
  readonly pieces: number;
  readonly members: readonly (number | undefined)[];
}
interface ClassColumns {
  readonly sites: SiteClass;
  readonly single: readonly ReadonlyMap<number, number>[];
  readonly shared: ReadonlyMap<number, Shared>;
}

/**
 * The problem as a linear model with one column per class of equal sites and pool.
 * Where every channel is in one run, no housing is shared, nothing is mixed and every input has one mode, the rows are
 * those of a network (channel → pool → input mode), whose vertices are whole: then no column is asked to be whole.
 */
export const formulate = (problem: AssignProblem, goal: Goal): Formulation => {
  const { places, pools } = problem;
  const classes = siteClasses(goal.costs ? problem : { ...problem, mixing: 0 });
  const isWhole = !isNetwork(problem, classes, goal);
  const build = new ModelBuilder();
  const stock = stockRows(problem, build);
  const inputs = inputRows(problem, build);
  const mixing = goal.costs && problem.mixing > 0 ? mixingRows(problem, classes, build) : undefined;
  const total = typeof goal.unserved === 'number' ? build.row(goal.unserved, goal.unserved) : undefined;
  const ones = (rows: readonly (number | undefined)[]): Entry[] =>
    rows.flatMap((row): Entry[] => (row === undefined ? [] : [[row, 1]]));

  const columnsOf = (sites: SiteClass): ClassColumns => {
    const { count, members, axes, slots, group } = sites;
    const costsOf = members.map(([first]) => places[first!]!.costs);
    const served = members.map(() => build.row(count, count));
    const link = (type: number): readonly Entry[] => mixing?.link(group, type, count) ?? [];

    const single = costsOf.map((costs, d) => {
      const columns = [...costs].map(([p, cost]): [number, number] => {
        const { mode, pieceCost, type } = pools[p]!;
        const rows = [served[d], ...inputs.during(mode, slots), ...stock.during(p, slots)];
        return [p, build.column(goal.costs ? cost + pieceCost : 0, count, isWhole, [...ones(rows), ...link(type)])];
      });
      return new Map(columns);
    });

    const sharable = pools.flatMap((pool, p) => {
      const reach = new Set(axes.filter((_, d) => costsOf[d]!.has(p)));
      return pool.axes > 1 && reach.size > 1 ? [p] : [];
    });
    // Equal sites are told apart afterwards, which takes that each has one shared housing at most.
    const housings = sharable.length > 1 && count > 1 ? build.row(-Infinity, count) : undefined;
    const sharedOf = (p: number): Shared => {
      const { axes: width, mode, pieceCost, type } = pools[p]!;
      const perAxis = new Map(axes.map((axis) => [axis, build.row(-Infinity, 0)]));
      const all = perAxis.size > width ? build.row(-Infinity, 0) : undefined;
      const most = count === 1 ? members.length : count;
      const pieces = build.column(goal.costs ? pieceCost : 0, most, true, [
        ...ones([...stock.during(p, slots), housings]),
        ...[...perAxis.values()].map((row): Entry => [row, -1]),
        ...(all === undefined ? [] : [[all, -width] as const]),
        ...(mixing?.link(group, type, most) ?? []),
      ]);
      const columns = costsOf.map((costs, d) => {
        const cost = costs.get(p);
        if (cost === undefined) return undefined;
        const rows = [served[d], ...inputs.during(mode, slots), perAxis.get(axes[d]!), all];
        return build.column(goal.costs ? cost : 0, count, true, ones(rows));
      });
      return { pieces, members: columns };
    };
    const shared = new Map(sharable.map((p) => [p, sharedOf(p)]));

    if (goal.unserved !== 'none')
      members.forEach(([first], d) => {
        const price = goal.unserved === 'fewest' ? 1 : goal.costs ? places[first!]!.unservedCost : 0;
        build.column(price, count, isWhole, ones([served[d], total]));
      });
    return { sites, single, shared };
  };

  const columns = classes.map(columnsOf);
  const extra = <K>(keys: readonly K[], rowsOf: (key: K) => readonly number[]): ReadonlyMap<K, number> =>
    new Map(keys.map((key) => [key, build.column(1, Infinity, isWhole, rowsOf(key).map((row) => [row, -1]))])); // prettier-ignore
  const extraPieces = extra(goal.extra?.pools ?? [], stock.all);
  const extraInputs = extra(goal.extra?.modes ?? [], inputs.all);
  mixing?.close();

  const answer = (values: ArrayLike<number>): Answer => {
    const at = (column: number | undefined): number => (column === undefined ? 0 : Math.round(values[column]!));
    const taken = <K>(all: ReadonlyMap<K, number>): Map<K, number> =>
      new Map([...all].map(([key, column]) => [key, at(column)] as const).filter(([, n]) => n > 0));
    const flows = columns.map(({ sites, single, shared }): ClassFlow => ({
      sites,
      single: single.map(taken),
      shared: new Map(
        [...shared]
          .map(([p, { pieces, members }]) => [p, { pieces: at(pieces), served: members.map(at) }] as const)
          .filter(([, { pieces }]) => pieces > 0),
      ),
    }));
    return { ...handOut(flows), extraPieces: taken(extraPieces), extraInputs: taken(extraInputs) };
  };
  return { model: build.build(), answer };
};

const isNetwork = (problem: AssignProblem, classes: readonly SiteClass[], goal: Goal): boolean =>
  classes.every(({ members, slots }) => members.length === 1 && slots.first === slots.last) &&
  !(goal.costs && problem.mixing > 0 && problem.places.some(({ group }) => group !== undefined)) &&
  (problem.inputs ?? []).every(({ modes }) => modes.length === 1) &&
  (goal.extra === undefined || problem.slots === 1);
