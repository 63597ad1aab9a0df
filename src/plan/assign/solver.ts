/** A linear or mixed-integer model to be minimised: columns with costs and bounds, rows with bounds, entries by column. */
export interface LinearModel {
  readonly columns: number;
  readonly rows: number;
  readonly cost: Float64Array;
  readonly lower: Float64Array;
  readonly upper: Float64Array;
  /** 1 where a column must be whole. */
  readonly whole: Uint8Array;
  readonly rowLower: Float64Array;
  readonly rowUpper: Float64Array;
  /** Column c has the entries starts[c] … starts[c + 1] − 1. */
  readonly starts: Int32Array;
  readonly indices: Int32Array;
  readonly values: Float64Array;
}

/** The part of AbortSignal that is used; this layer compiles without the DOM. */
export interface CancelSignal {
  readonly aborted: boolean;
  addEventListener?(type: 'abort', listener: () => void): void;
  removeEventListener?(type: 'abort', listener: () => void): void;
}

export interface SolveProgress {
  readonly seconds: number;
  /** Cost of the best solution so far. */
  readonly best?: number;
  /** Proven: no solution costs less. */
  readonly bound?: number;
}

export interface SolveOptions {
  readonly onProgress?: (progress: SolveProgress) => void;
  readonly signal?: CancelSignal;
  /** Seconds after which the best solution so far is given. */
  readonly timeLimit?: number;
  /** The best so far may be given before that, once little can be gained; see `isGoodEnough`. */
  readonly mayEndEarly?: boolean;
}

/** Share of the time in which only a proof ends a search. */
const PATIENCE = 1 / 6;
/** Of the cost; what may be left unproven when all time is used up. */
const MOST_GAP = 0.05;

/** The more of the time is used, the more may be left to gain: nothing in the first sixth of it, 0.8 % after half. */
export const isGoodEnough = ({ seconds, best, bound }: SolveProgress, timeLimit: number): boolean => {
  const used = (seconds / timeLimit - PATIENCE) / (1 - PATIENCE);
  if (best === undefined || bound === undefined || used <= 0) return false;
  return best - bound <= MOST_GAP * used ** 2 * Math.abs(best);
};

export interface Solution {
  /** `time limit`: also when it ended early. */
  readonly status: 'optimal' | 'infeasible' | 'time limit' | 'cancelled' | 'failed';
  /** One value per column; absent when none was found. */
  readonly values?: Float64Array;
  readonly cost?: number;
  /** Proven lower bound of the cost; equals the cost when optimal. */
  readonly bound?: number;
}

/** Minimises a model. Rejects only when the solver itself cannot run. */
export interface Solver {
  solve(model: LinearModel, options?: SolveOptions): Promise<Solution>;
}
