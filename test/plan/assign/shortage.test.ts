import { nodeSolver } from '../../../src/adapters/solver/node-solver';
import { findShortage, sizeOf, type Addition } from '../../../src/plan/assign/shortage';
import { solveProblem } from '../../../src/plan/assign/solve';
import type { AssignProblem } from '../../../src/plan/assign/problem';
import type { InputMode } from '../../../src/plan/fields';
import { randomProblem, type Shape } from './random-problem';

/** Whether all are served, by trying every pool for every channel in turn; no solver, no model. */
const servesAll = ({ places, pools, slots, inputs }: AssignProblem): boolean => {
  const free = pools.map(({ count }) => new Array<number>(slots).fill(count));
  const rooms = inputs?.map(({ channels }) => new Array<number>(slots).fill(channels));
  const open: { pool: number; site: string; slot: string; axes: Set<string>; left: number }[] = [];
  const placed = (i: number): boolean => {
    const place = places[i];
    if (!place) return true;
    const runs = Array.from({ length: place.slots.last - place.slots.first + 1 }, (_, k) => place.slots.first + k);
    const withInput = (mode: InputMode | undefined, then: () => boolean): boolean => {
      if (!rooms || !mode) return then();
      const choose = (k: number): boolean => {
        if (k === runs.length) return then();
        return inputs!.some((input, n) => {
          const room = rooms[n]!;
          if (!input.modes.includes(mode) || room[runs[k]!]! <= 0) return false;
          room[runs[k]!]! -= 1;
          if (choose(k + 1)) return true;
          room[runs[k]!]! += 1;
          return false;
        });
      };
      return choose(0);
    };
    for (const p of place.costs.keys()) {
      const pool = pools[p]!;
      const site = JSON.stringify([place.site, place.group]);
      const slot = JSON.stringify(place.slots);
      if (place.site !== undefined && place.axis !== undefined)
        for (const housing of open) {
          if (housing.pool !== p || housing.site !== site || housing.slot !== slot) continue;
          if (housing.left === 0 || housing.axes.has(place.axis)) continue;
          housing.left -= 1;
          housing.axes.add(place.axis);
          if (withInput(pool.mode, () => placed(i + 1))) return true;
          housing.left += 1;
          housing.axes.delete(place.axis);
        }
      if (runs.every((run) => free[p]![run]! > 0)) {
        for (const run of runs) free[p]![run]! -= 1;
        const axes = new Set([place.axis ?? '']);
        open.push({ pool: p, site: place.site === undefined ? '' : site, slot, axes, left: pool.axes - 1 });
        if (withInput(pool.mode, () => placed(i + 1))) return true;
        open.pop();
        for (const run of runs) free[p]![run]! += 1;
      }
    }
    return false;
  };
  return placed(0);
};

const withMore = (problem: AssignProblem, { pools, inputs }: Addition): AssignProblem => ({
  ...problem,
  pools: problem.pools.map((pool, p) => ({ ...pool, count: pool.count + (pools.get(p) ?? 0) })),
  inputs: problem.inputs && [
    ...problem.inputs,
    ...[...inputs].map(([mode, channels]) => ({ modes: [mode], channels })),
  ],
});

/** Every way to add so many pieces and input channels. */
function* additions(problem: AssignProblem, size: number): Generator<Addition> {
  const modes: InputMode[] = problem.inputs ? ['IEPE', 'charge', 'voltage'] : [];
  const kinds = problem.pools.length + modes.length;
  const counts = new Array<number>(kinds).fill(0);
  function* fill(kind: number, left: number): Generator<Addition> {
    if (kind === kinds - 1) {
      counts[kind] = left;
      yield {
        pools: new Map(problem.pools.map((_, p) => [p, counts[p]!])),
        inputs: new Map(modes.map((mode, m) => [mode, counts[problem.pools.length + m]!])),
      };
      return;
    }
    for (let n = 0; n <= left; n++) {
      counts[kind] = n;
      yield* fill(kind + 1, left - n);
    }
  }
  yield* fill(0, size);
}

const SHAPES: readonly Shape[] = [
  { triax: false, groups: false, runs: false, inputs: false },
  { triax: true, groups: false, runs: false, inputs: false },
  { triax: false, groups: false, runs: true, inputs: false },
  { triax: true, groups: false, runs: false, inputs: true },
];

describe('what is missing', () => {
  it.each(SHAPES)('is the least that helps, by trying every addition in turn: %j', async (shape) => {
    let compared = 0;
    for (let seed = 0; seed < 60 && compared < 12; seed++) {
      const drawn = randomProblem(500 + seed, shape);
      const places = drawn.places.filter(({ costs }) => costs.size > 0).slice(0, 6);
      const problem = { ...drawn, places };
      const outcome = await solveProblem(problem, nodeSolver);
      if (outcome.status !== 'solved') throw new Error(outcome.status);
      const { unserved } = outcome.answer;
      expect(servesAll(problem)).toBe(unserved.length === 0);
      if (unserved.length === 0) continue;
      compared += 1;
      const { fewest, alone, isProven } = await findShortage(problem, unserved, nodeSolver);
      expect(isProven).toBe(true);
      const size = sizeOf(fewest!);
      expect(servesAll(withMore(problem, fewest!))).toBe(true);
      for (const addition of additions(problem, size - 1)) expect(servesAll(withMore(problem, addition))).toBe(false);
      const helps = new Map<number, number>();
      problem.pools.forEach((_, p) => {
        const n = [1, 2, 3, 4, 5, 6].find((count) =>
          servesAll(withMore(problem, { pools: new Map([[p, count]]), inputs: new Map() })),
        );
        if (n !== undefined) helps.set(p, n);
      });
      const found = alone.flatMap(({ pools, inputs }) => (inputs.size === 0 ? [...pools] : []));
      expect(new Map(found)).toEqual(helps);
    }
    expect(compared).toBe(12);
  });
});
