import loadHighs, { type Highs } from 'highs';
import type { Solver } from '../../plan/assign/solver';
import { runHighs } from './highs-model';

let loading: Promise<Highs> | undefined;

/** HiGHS on the calling thread: for the command and for tests. Cancelling works between its steps, not from outside. */
export const nodeSolver: Solver = {
  async solve(model, { onProgress, signal, timeLimit, mayEndEarly } = {}) {
    loading ??= loadHighs();
    const highs = await loading;
    if (signal?.aborted) return { status: 'cancelled' };
    return runHighs(highs, model, { timeLimit, mayEndEarly, onProgress, isCancelled: () => signal?.aborted ?? false });
  },
};
