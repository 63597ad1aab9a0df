import { nodeSolver } from '../../../src/adapters/solver/node-solver';
import { solveProblem } from '../../../src/plan/assign/solve';
import { isGoodEnough } from '../../../src/plan/assign/solver';
import { judgeAnswer } from './judge-answer';
import { largeProblem } from './large-problem';

describe('a search that may end early', () => {
  it('is held to a proof at first, and to less and less of the cost as its time is used up', () => {
    const leaves = (gap: number, seconds: number) => isGoodEnough({ seconds, best: 100, bound: 100 - 100 * gap }, 60);
    expect(leaves(0, 9)).toBe(false);
    expect([leaves(0.007, 30), leaves(0.009, 30)]).toEqual([true, false]);
    expect([leaves(0.049, 60), leaves(0.051, 60)]).toEqual([true, false]);
    expect(isGoodEnough({ seconds: 59, bound: 3 }, 60)).toBe(false);
  });

  it('gives whole pieces, says what may be left to gain, and calls proven only what is', async () => {
    const problem = largeProblem(300, 100, { mixing: 4, triax: true });
    const found = await solveProblem(problem, nodeSolver, { timeLimit: 6 });
    if (found.status !== 'solved') throw new Error(found.status);
    const { cost, faults } = judgeAnswer(problem, found.answer);
    expect(faults).toEqual([]);
    expect(found.bound!).toBeLessThanOrEqual(cost + 1e-3);
    expect(found.isOptimal).toBe(cost - found.bound! <= 1e-3);
  }, 30_000);
});
