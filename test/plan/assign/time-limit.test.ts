import { nodeSolver } from '../../../src/adapters/solver/node-solver';
import { solveProblem } from '../../../src/plan/assign/solve';
import { judgeAnswer } from './judge-answer';
import { largeProblem } from './large-problem';

jest.setTimeout(60_000);

describe('a search that runs out of time', () => {
  it('gives the best so far, which breaks no rule, and a bound that is no larger than its cost', async () => {
    const problem = largeProblem(1000, 200, { mixing: 4 });
    const found = await solveProblem(problem, nodeSolver, { timeLimit: 8 });
    if (found.status !== 'solved') throw new Error(found.status);
    expect(found.isOptimal).toBe(false);
    const { cost, faults } = judgeAnswer(problem, found.answer);
    expect(faults).toEqual([]);
    // The solver may count a type in a group that nothing there uses, as long as it has not proven anything.
    expect(found.cost).toBeGreaterThan(cost - 1e-3);
    expect(found.bound!).toBeLessThan(cost);
    expect(found.bound!).toBeGreaterThan(0);
  });
});
