import { INPUT_MODES, type InputMode } from '../fields';
import type { AssignProblem } from './problem';
import { ask } from './solve';
import type { SolveOptions, Solver } from './solver';
import { TimeLeft } from './time-left';

/** What to add so that all channels are served, by pool and by input mode. */
export interface Addition {
  readonly pools: ReadonlyMap<number, number>;
  readonly inputs: ReadonlyMap<InputMode, number>;
}

export interface Shortage {
  /** The fewest pieces and input channels that help, whichever they are. */
  readonly fewest?: Addition;
  /** What helps alone, fewest first: any one of these is enough. */
  readonly alone: readonly Addition[];
  /** True: everything above is proven, and nothing else helps alone. */
  readonly isProven: boolean;
}

/** Kinds that are tried alone; more would keep a person waiting for answers beyond reading. */
const MOST_ALONE = 40;

/**
 * What is missing for the channels that are left out, by further solves in which stock may be exceeded.
 * Channels for which no pool is admissible must have been taken out before.
 */
export const findShortage = async (
  problem: AssignProblem,
  unserved: readonly number[],
  solver: Solver,
  options: SolveOptions = {},
): Promise<Shortage> => {
  const time = new TimeLeft(options.timeLimit);
  const { places, pools, inputs } = problem;
  const admits = pools.map((_, p) => places.filter(({ costs }) => costs.has(p)).length);
  const short = pools.flatMap(({ count }, p) => (admits[p]! > 0 && count < Infinity ? [p] : []));
  const needed = new Set(short.flatMap((p) => pools[p]!.mode ?? []));
  const modes = inputs ? INPUT_MODES.filter((mode) => needed.has(mode)) : [];
  let isProven = true;
  const least = async (
    extraPools: readonly number[],
    extraModes: readonly InputMode[],
  ): Promise<Addition | undefined> => {
    const goal = { unserved: 'none', costs: false, extra: { pools: extraPools, modes: extraModes } } as const;
    const { solution, answer } = await ask(problem, goal, solver, options, time);
    if (solution.status !== 'optimal' && solution.status !== 'infeasible') isProven = false;
    return answer && solution.status === 'optimal'
      ? { pools: answer.extraPieces, inputs: answer.extraInputs }
      : undefined;
  };

  const fewest = await least(short, modes);
  const reach = (p: number): number => unserved.filter((i) => places[i]!.costs.has(p)).length;
  const tried = short
    .map((p) => ({ p, reach: reach(p) }))
    .sort((a, b) => b.reach - a.reach || admits[b.p]! - admits[a.p]!)
    .slice(0, MOST_ALONE);
  if (tried.length < short.length) isProven = false;
  const alone: Addition[] = [];
  for (const { p } of tried) {
    const found = await least([p], []);
    if (found) alone.push(found);
  }
  for (const mode of modes) {
    const found = await least([], [mode]);
    if (found) alone.push(found);
  }
  alone.sort((a, b) => sizeOf(a) - sizeOf(b));
  return { fewest, alone, isProven };
};

export const sizeOf = ({ pools, inputs }: Addition): number =>
  [...pools.values(), ...inputs.values()].reduce((sum, n) => sum + n, 0);
