import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { nodeSolver } from '../../src/adapters/solver/node-solver';
import { formulate } from '../../src/plan/assign/formulate';
import type { LinearModel } from '../../src/plan/assign/solver';
import { openSolverPage, solveInPage } from '../end-to-end/solver-page';
import { launch, startServer } from '../end-to-end/workbench-page';
import { largeProblem } from '../plan/assign/large-problem';
import { pythonWith } from '../python';

const CASES = {
  'all channels different': largeProblem(1000, 200, { kinds: 1000 }),
  '40 kinds of channel': largeProblem(1000, 200),
  'housings with three axes': largeProblem(1000, 200, { triax: true }),
};

const native = (root: string, models: readonly LinearModel[]): readonly (readonly [number, number, number])[] => {
  const python = pythonWith('numpy', 'scipy');
  if (!python) throw new Error('python3 with numpy and scipy is needed.');
  const lines = models.map(
    (model) =>
    JSON.stringify(model, (_, value: unknown) => (ArrayBuffer.isView(value) ? Array.from(value as Float64Array, String) : value)), // prettier-ignore
  );
  const { stdout, stderr, status } = spawnSync(python, [join(root, 'test/bench/assign.py')], {
    input: lines.join('\n'),
    encoding: 'utf8',
    maxBuffer: 1 << 28,
  });
  if (status !== 0) throw new Error(stderr);
  return stdout.trim().split('\n').map((line) => JSON.parse(line)); // prettier-ignore
};

/** Assignment of 1,000 channels to 200 types: in Node, in the page's worker, and by HiGHS called natively. */
export const run = async (root: string): Promise<void> => {
  const built = Object.entries(CASES).map(([name, problem]) => {
    const start = performance.now();
    const { model } = formulate(problem, { unserved: 'none', costs: true });
    return { name, model, stated: performance.now() - start };
  });
  const natives = native(root, built.map(({ model }) => model)); // prettier-ignore
  const server = await startServer(root);
  const browser = await launch();
  const page = await openSolverPage(root, browser, server.address);
  console.log(
    'Assignment, 1,000 channels by 200 types, in milliseconds; the ratio is to native HiGHS on the same model',
  );
  console.log(
    '                               columns    state   native     Node  ratio   worker  ratio  longest frame    worker start',
  );
  try {
    for (const [i, { name, model, stated }] of built.entries()) {
      const start = performance.now();
      const inNode = await nodeSolver.solve(model, { timeLimit: 120 });
      const node = performance.now() - start;
      const worker = await solveInPage(page, model);
      const [seconds, cost] = natives[i]!;
      const rival = 1000 * seconds;
      const cell = (n: number, width = 9) => String(Math.round(n)).padStart(width);
      const ratio = (n: number) => (n / rival).toFixed(1).padStart(7);
      console.log(`  ${name.padEnd(28)}${cell(model.columns)}${cell(stated)}${cell(rival)}${cell(node)}${ratio(node)}${cell(worker.milliseconds)}${ratio(worker.milliseconds)}${cell(worker.longestFrame, 15)}${cell(worker.startMilliseconds, 16)}`); // prettier-ignore
      const costs = [cost, inNode.cost, worker.cost].map((value) => value?.toFixed(3));
      if (new Set(costs).size > 1) console.log(`    costs differ: ${costs.join(', ')}`);
    }
  } finally {
    await browser.close();
    await server.close();
  }
};
