import type { Highs, ModelData } from 'highs';
import { isGoodEnough, type LinearModel, type Solution, type SolveProgress } from '../../plan/assign/solver';

/** Codes of HiGHS for how a solve ended. */
const OPTIMAL = 7;
const EMPTY = 6;
const ENDINGS: Readonly<Record<number, Solution['status']>> = {
  [EMPTY]: 'optimal',
  [OPTIMAL]: 'optimal',
  8: 'infeasible',
  // Unbounded or infeasible: our costs are bounded from below, so it is the latter.
  9: 'infeasible',
  13: 'time limit',
  17: 'cancelled',
};
/** Costs are given in thousandths, so that two different totals are further apart than this. */
const ABSOLUTE_GAP = 5e-4;
const INTEGER = 1;
const FEASIBLE = 2;

const dataOf = (model: LinearModel): ModelData => ({
  numCols: model.columns,
  numRows: model.rows,
  colCost: model.cost,
  colLower: model.lower,
  colUpper: model.upper,
  rowLower: model.rowLower,
  rowUpper: model.rowUpper,
  matrix: {
    format: 'csc',
    numCols: model.columns,
    numRows: model.rows,
    starts: model.starts,
    indices: model.indices,
    values: model.values,
  },
  ...(model.whole.includes(1) && { integrality: Int32Array.from(model.whole, (whole) => (whole ? INTEGER : 0)) }),
});

export interface RunOptions {
  readonly timeLimit?: number;
  readonly mayEndEarly?: boolean;
  readonly onProgress?: (progress: SolveProgress) => void;
  readonly isCancelled?: () => boolean;
}

const finite = (value: unknown): number | undefined =>
  typeof value === 'number' && Math.abs(value) < 1e20 ? value : undefined;

/** Solves a model to proven optimality; blocks until it is done. */
export const runHighs = (highs: Highs, model: LinearModel, options: RunOptions = {}): Solution => {
  if (model.columns === 0)
    return model.rowLower.some((lower) => lower > 0) || model.rowUpper.some((upper) => upper < 0)
      ? { status: 'infeasible' }
      : { status: 'optimal', values: new Float64Array(), cost: 0, bound: 0 };
  const isMip = model.whole.includes(1);
  return highs.withModel(dataOf(model), (instance): Solution => {
    instance.options.set({ mip_rel_gap: 0, mip_abs_gap: ABSOLUTE_GAP, output_flag: false });
    // HiGHS 1.15.1 loses the optimum of some models with whole numbers in presolve, and calls what is left optimal:
    // 3 of 8,000 random assignments. Without presolve all agree with other solvers.
    if (isMip) instance.options.set('presolve', 'off');
    const { timeLimit, mayEndEarly = false } = options;
    if (timeLimit !== undefined) instance.options.set('time_limit', timeLimit);
    let isEnough = false;
    const interrupt = (event: { interrupt(): void }): undefined => {
      if (options.isCancelled?.()) event.interrupt();
    };
    const { modelStatus } = instance.run({
      1: interrupt,
      6: (event) => {
        const { running_time: seconds = 0, mip_primal_bound, mip_dual_bound } = event.data;
        const progress = { seconds, best: finite(mip_primal_bound), bound: finite(mip_dual_bound) };
        options.onProgress?.(progress);
        isEnough = mayEndEarly && timeLimit !== undefined && isGoodEnough(progress, timeLimit);
        if (isEnough) event.interrupt();
        return interrupt(event);
      },
    });
    const ending = ENDINGS[modelStatus] ?? 'failed';
    const status = isEnough && ending === 'cancelled' ? 'time limit' : ending;
    const isFound = status === 'optimal' || instance.info.get('primal_solution_status') === FEASIBLE;
    if (!isFound || status === 'infeasible') return { status };
    const cost = instance.getObjectiveValue();
    const bound = status === 'optimal' ? cost : isMip ? finite(Number(instance.info.get('mip_dual_bound'))) : undefined;
    const isProven = bound !== undefined && cost - bound <= ABSOLUTE_GAP;
    return { status: isProven ? 'optimal' : status, values: instance.getSolution().colValue.slice(), cost, bound };
  });
};
