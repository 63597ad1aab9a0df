import type { InputMode } from '../fields';
import { inputRows, mixingRows, stockRows } from './formulate-rows';
import { siteColumns } from './formulate-site';
import { handOut, type ClassFlow } from './hand-out';
import { ModelBuilder } from './model-builder';
import type { AssignProblem, Housing } from './problem';
import { siteClasses, type SiteClass } from './sites';
import type { LinearModel } from './solver';

/** What is asked of the solver. */
export interface Goal {
  /** `none`: all must be served; `fewest`: count those left out, kept ones first; a number: exactly so many are left out. */
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

/**
 * The problem as a linear model with one column per class of equal sites and pool.
 * Where every channel is in one run and every input has one mode, the rows are those of a network (channel → pool in its
 * group → pool → input mode) once shared housings and types per group are settled. The vertices of a network are whole:
 * then only those housings and types are asked to be.
 */
export const formulate = (problem: AssignProblem, goal: Goal): Formulation => {
  const classes = siteClasses(goal.costs ? problem : { ...problem, mixing: 0 });
  const isWhole = !isNetwork(problem, classes, goal);
  const build = new ModelBuilder();
  const stock = stockRows(problem, build);
  const inputs = inputRows(problem, build);
  const mixing = goal.costs && problem.mixing > 0 ? mixingRows(problem, classes, build) : undefined;
  const total = typeof goal.unserved === 'number' ? build.row(goal.unserved, goal.unserved) : undefined;
  const columns = classes.map((sites) =>
    siteColumns(sites, { problem, goal, build, stock, inputs, mixing, total, isWhole }),
  );
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
  classes.every(({ slots }) => slots.first === slots.last) &&
  (problem.inputs ?? []).every(({ modes }) => modes.length === 1) &&
  (goal.extra === undefined || problem.slots === 1);
