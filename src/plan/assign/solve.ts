import { formulate, type Answer, type Goal } from './formulate';
import type { AssignProblem } from './problem';
import { TimeLeft } from './time-left';
import type { Solution, SolveOptions, Solver } from './solver';

/** What was found, and how sure it is. */
export interface SolvedAssignment {
  readonly answer: Answer;
  /** True: no assignment that serves as many costs less. */
  readonly isOptimal: boolean;
  /** True: no assignment leaves fewer channels out, of those that serve as many of the kept ones. */
  readonly isFewest: boolean;
  /** As the solver counts; where it is not optimal the answer itself may cost less. */
  readonly cost: number;
  /** Proven lower bound of the cost, where it is known. */
  readonly bound?: number;
}

export type SolveOutcome =
  ({ readonly status: 'solved' } & SolvedAssignment) | { readonly status: 'time limit' | 'cancelled' | 'failed' };

/** One question to the solver, within the time that is left. */
export const ask = async (
  problem: AssignProblem,
  goal: Goal,
  solver: Solver,
  options: SolveOptions,
  time: TimeLeft,
): Promise<{ readonly solution: Solution; readonly answer?: Answer }> => {
  const { model, answer } = formulate(problem, goal);
  const solution = await solver.solve(model, { ...options, timeLimit: time.left() });
  const { values } = solution;
  return { solution, answer: values && answer(values) };
};

/**
 * The cheapest assignment that serves all channels; where that cannot be, the cheapest among those that leave out the
 * fewest. Every step is solved to proven optimality, unless time runs out: then the best so far comes with its bound.
 */
export const solveProblem = async (
  problem: AssignProblem,
  solver: Solver,
  options: SolveOptions = {},
): Promise<SolveOutcome> => {
  const time = new TimeLeft(options.timeLimit);
  const whole = await ask(problem, { unserved: 'none', costs: true }, solver, options, time);
  if (whole.answer) return solved(whole.solution, whole.answer, true);
  if (whole.solution.status === 'cancelled' || whole.solution.status === 'failed')
    return { status: whole.solution.status };

  const fewest = await ask(problem, { unserved: 'fewest', costs: false }, solver, options, time);
  if (!fewest.answer) return { status: ending(fewest.solution.status) };
  const unserved = fewest.answer.unserved.length;
  const isFewest = fewest.solution.status === 'optimal';
  const cheapest = await ask(problem, { unserved, costs: true }, solver, options, time);
  if (cheapest.answer) return solved(cheapest.solution, cheapest.answer, isFewest);
  if (cheapest.solution.status === 'cancelled') return { status: 'cancelled' };
  return { status: 'solved', answer: fewest.answer, isOptimal: false, isFewest, cost: Infinity };
};

const solved = ({ status, cost = 0, bound }: Solution, answer: Answer, isFewest: boolean): SolveOutcome => ({
  status: 'solved',
  answer,
  isOptimal: status === 'optimal',
  isFewest,
  cost,
  bound,
});

/** Leaving channels out is always possible, so "infeasible" would be a fault of ours. */
const ending = (status: Solution['status']): 'time limit' | 'cancelled' | 'failed' =>
  status === 'cancelled' || status === 'time limit' ? status : 'failed';
