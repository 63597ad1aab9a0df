import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { nodeSolver } from '../../src/adapters/solver/node-solver';
import { solveProblem } from '../../src/plan/assign/solve';
import { judgeAnswer } from '../plan/assign/judge-answer';
import { plainProblem, randomProblem, type Shape } from '../plan/assign/random-problem';
import { pythonWith } from '../python';

const python = pythonWith('numpy', 'scipy');
if (!python) throw new Error('python3 with numpy and scipy is needed for this test.');

const SHAPES: readonly Shape[] = Array.from({ length: 16 }, (_, n) => ({
  triax: (n & 1) > 0,
  groups: (n & 2) > 0,
  runs: (n & 4) > 0,
  inputs: (n & 8) > 0,
}));
const PER_SHAPE = Number(process.env['ASSIGN_CASES'] ?? 25);
const nameOf = (shape: Shape): string =>
  ['triax', 'groups', 'runs', 'inputs'].filter((key) => shape[key as keyof Shape]).join(', ') || 'plain';

const problemsOf = (shape: Shape, s: number) =>
  Array.from({ length: PER_SHAPE }, (_, n) => randomProblem(s * 10_000 + n, shape));
const all = SHAPES.flatMap(problemsOf);
const run = spawnSync(python, [join(__dirname, 'assign.py')], {
  input: JSON.stringify(all.map(plainProblem)),
  encoding: 'utf8',
  maxBuffer: 1 << 26,
});
if (run.status !== 0) throw new Error(run.stderr);
const expected: readonly (readonly [unserved: number, cost: number])[] = JSON.parse(run.stdout);

describe('against scipy, with a variable for every piece and channel', () => {
  it('has enough cases, and enough that cannot serve all', () => {
    expect(expected.length).toBeGreaterThanOrEqual(300);
    expect(expected.filter(([unserved]) => unserved > 0).length).toBeGreaterThan(50);
    expect(expected.filter(([unserved]) => unserved === 0).length).toBeGreaterThan(50);
  });

  it.each(SHAPES.map((shape, s) => [nameOf(shape), s] as const))(
    'leaves out as few channels at as little cost as linear_sum_assignment or milp do: %s',
    async (_, s) => {
      for (let n = s * PER_SHAPE; n < (s + 1) * PER_SHAPE; n++) {
        const problem = all[n]!;
        const found = await solveProblem(problem, nodeSolver);
        if (found.status !== 'solved') throw new Error(found.status);
        const { cost, faults } = judgeAnswer(problem, found.answer);
        const [unserved, least] = expected[n]!;
        expect({ n, faults, unserved: found.answer.unserved.length }).toEqual({ n, faults: [], unserved });
        expect({ n, off: Math.abs(cost - least) > 1e-6 }).toEqual({ n, off: false });
        expect(found.cost).toBeCloseTo(cost, 6);
        expect(found.isOptimal && found.isFewest).toBe(true);
      }
    },
  );
});
