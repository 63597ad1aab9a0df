import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { nodeSolver } from '../../src/adapters/solver/node-solver';
import { formulate } from '../../src/plan/assign/formulate';
import type { LinearModel } from '../../src/plan/assign/solver';
import { assignInPage, openAssignerPage, randomQuestion } from '../end-to-end/assigner-page';
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

const cell = (n: number, width = 10) => String(Math.round(n)).padStart(width);

/** The solver alone, against HiGHS called natively on the same models. */
const solving = async (root: string): Promise<void> => {
  const built = Object.entries(CASES).map(([name, problem]) => {
    const start = performance.now();
    const { model } = formulate(problem, { unserved: 'none', costs: true });
    return { name, model, stated: performance.now() - start };
  });
  const natives = native(root, built.map(({ model }) => model)); // prettier-ignore
  console.log(
    'Assignment, 1,000 channels by 200 types, in milliseconds; the ratio is to native HiGHS on the same model',
  );
  console.log('                               columns     state    native      Node  ratio');
  for (const [i, { name, model, stated }] of built.entries()) {
    const start = performance.now();
    const found = await nodeSolver.solve(model, { timeLimit: 120 });
    const took = performance.now() - start;
    const [seconds, cost] = natives[i]!;
    const ratio = (took / (1000 * seconds)).toFixed(1).padStart(7);
    console.log(
      `  ${name.padEnd(28)}${cell(model.columns)}${cell(stated)}${cell(1000 * seconds)}${cell(took)}${ratio}`,
    );
    if (cost.toFixed(3) !== found.cost?.toFixed(3)) console.log(`    costs differ: ${cost}, ${found.cost}`);
  }
};

/** From the question to the answer in the page: judging 1,000 different channels by 200 types, then solving. */
const inPage = async (root: string): Promise<void> => {
  const server = await startServer(root);
  const browser = await launch();
  try {
    const page = await openAssignerPage(root, browser, server.address);
    console.log('The whole in the worker of the page; the longest frame is that of the page meanwhile');
    console.log('  types per part                 judging     total  longest frame  served  gap');
    for (const [name, mixing] of [
      ['do not count', 0],
      ['few', 4],
    ] as const) {
      const options = { allowWarn: true, timeLimit: 60, shortage: false, weights: { mixing } };
      const found = await assignInPage(page, randomQuestion(1000, 200, options));
      const gap = found.gap === undefined ? 'proven' : `${(100 * found.gap).toPrecision(2)} %`;
      console.log(`  ${name.padEnd(28)}${cell(found.judged)}${cell(found.milliseconds)}${cell(found.longestFrame, 15)}${cell(found.assigned.length, 8)}  ${gap}`); // prettier-ignore
    }
  } finally {
    await browser.close();
    await server.close();
  }
};

export const run = async (root: string): Promise<void> => {
  await solving(root);
  await inPage(root);
};
