import { formulate, type Answer, type Goal } from './formulate';
import type { AssignProblem } from './problem';
import { TimeLeft } from './time-left';
import type { LinearModel, Solution, SolveOptions, Solver } from './solver';

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

/** The least distance from a whole number that is more than rounding. */
const FRACTION = 1e-5;

/**
 * Columns that are whole at the vertices of a network need not be so elsewhere, and not every solution is a vertex: then
 * those that had to be whole are held, and what is left is a network.
 */
const wholeSolution = async (
  model: LinearModel,
  solution: Solution,
  solver: Solver,
  { signal }: SolveOptions,
): Promise<Solution> => {
  const { values, bound, status } = solution;
  if (!values || values.every((value) => Math.abs(value - Math.round(value)) < FRACTION)) return solution;
  const held = (ends: Float64Array) => ends.map((end, c) => (model.whole[c] ? Math.round(values[c]!) : end));
  const rest = { ...model, lower: held(model.lower), upper: held(model.upper), whole: new Uint8Array(model.columns) };
  const found = await solver.solve(rest, { signal });
  return found.status === 'optimal' ? { ...found, status, bound } : found;
};

/** One question to the solver, within the time that is left. */
export const ask = async (
  problem: AssignProblem,
  goal: Goal,
  solver: Solver,
  options: SolveOptions,
  time: TimeLeft,
): Promise<{ readonly solution: Solution; readonly answer?: Answer }> => {
  const { model, answer } = formulate(problem, goal);
  const asked = { ...options, timeLimit: time.left(), mayEndEarly: goal.costs };
  const solution = await wholeSolution(model, await solver.solve(model, asked), solver, options);
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
