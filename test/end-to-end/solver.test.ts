import { resolve } from 'node:path';
import type { Browser } from 'playwright-core';
import { nodeSolver } from '../../src/adapters/solver/node-solver';
import { formulate } from '../../src/plan/assign/formulate';
import { largeProblem } from '../plan/assign/large-problem';
import { openSolverPage, solveInPage } from './solver-page';
import { launch, startServer } from './workbench-page';

const root = resolve(__dirname, '../..');
jest.setTimeout(90_000);
const GOAL = { unserved: 'none', costs: true } as const;

describe('the solver in a worker of the page', () => {
  let server: Awaited<ReturnType<typeof startServer>>;
  let browser: Browser;
  beforeAll(async () => {
    server = await startServer(root);
    browser = await launch();
  });
  afterAll(async () => {
    await browser.close();
    await server.close();
  });

  it('finds the optimum that Node finds, while the page goes on, under a policy that lets only the worker compile', async () => {
    const page = await openSolverPage(root, browser, server.address);
    const { model } = formulate(largeProblem(300, 100), GOAL);
    const expected = await nodeSolver.solve(model);
    const found = await solveInPage(page, model);
    expect(found.status).toBe('optimal');
    expect(found.cost).toBeCloseTo(expected.cost!, 6);
    const compile = () => WebAssembly.compile(new Uint8Array([0, 97, 115, 109, 1, 0, 0, 0])).then(() => 'compiled', (error: Error) => error.name); // prettier-ignore
    expect(await page.evaluate(compile)).toBe('CompileError');
    await page.close();
  });

  it('ends at once when a person cancels, and starts afresh with the next question', async () => {
    const page = await openSolverPage(root, browser, server.address);
    const { model } = formulate(largeProblem(1000, 200, { mixing: 4 }), GOAL);
    const cancelled = await solveInPage(page, model, 1500);
    expect(cancelled.status).toBe('cancelled');
    const small = formulate(largeProblem(30, 20), { unserved: 'fewest', costs: false }).model;
    expect((await solveInPage(page, small)).status).toBe('optimal');
    await page.close();
  });
});
