import { join } from 'node:path';
import { buildSync } from 'esbuild';
import type { Browser, Page } from 'playwright-core';
import type { LinearModel, Solution } from '../../src/plan/assign/solver';

declare global {
  interface Window {
    solving: typeof import('../../src/adapters/solver/browser-solver');
  }
}

const ARRAYS = ['cost', 'lower', 'upper', 'whole', 'rowLower', 'rowUpper', 'starts', 'indices', 'values'] as const;

/** A model as JSON; infinities as texts. */
const plain = (model: LinearModel): string =>
  JSON.stringify({ ...model, ...Object.fromEntries(ARRAYS.map((key) => [key, Array.from(model[key], String)])) });

/** A page of the workbench with our side of the solver in it; the worker is the one that was built. */
export const openSolverPage = async (root: string, browser: Browser, address: string): Promise<Page> => {
  const { outputFiles } = buildSync({
    stdin: {
      contents: `import * as solving from './browser-solver'; window.solving = solving;`,
      resolveDir: join(root, 'src/adapters/solver'),
      loader: 'ts',
    },
    bundle: true,
    format: 'iife',
    write: false,
  });
  const page = await browser.newPage();
  await page.goto(`${address}workbench.html`);
  await page.evaluate(outputFiles[0]!.text);
  return page;
};

export interface PageSolution {
  readonly status: Solution['status'];
  readonly cost?: number;
  readonly values?: readonly number[];
  /** Of this model alone; the worker had been started and its WebAssembly compiled by another one. */
  readonly milliseconds: number;
  readonly startMilliseconds: number;
  /** Longest time between two frames while the worker computed. */
  readonly longestFrame: number;
  readonly reports: number;
}

/** Solves in the worker of the page; `cancelAfter` in milliseconds. */
export const solveInPage = (page: Page, model: LinearModel, cancelAfter?: number): Promise<PageSolution> =>
  page.evaluate(
    async ({ text, cancel }) => {
      const given = JSON.parse(text);
      const numbers = (key: string) => Float64Array.from(given[key], Number);
      const whole = (key: string) => Int32Array.from(given[key], Number);
      const asked = {
        columns: given.columns,
        rows: given.rows,
        cost: numbers('cost'),
        lower: numbers('lower'),
        upper: numbers('upper'),
        whole: Uint8Array.from(given.whole, Number),
        rowLower: numbers('rowLower'),
        rowUpper: numbers('rowUpper'),
        starts: whole('starts'),
        indices: whole('indices'),
        values: numbers('values'),
      };
      const solver = new window.solving.BrowserSolver();
      const nothing = Float64Array.of(0);
      const one = { cost: nothing, lower: nothing, upper: nothing, whole: Uint8Array.of(0), values: nothing };
      const none = { rowLower: nothing, rowUpper: nothing, starts: Int32Array.of(0, 1), indices: Int32Array.of(0) };
      const before = performance.now();
      await solver.solve({ columns: 1, rows: 1, ...one, ...none });
      const startMilliseconds = performance.now() - before;
      const controller = new AbortController();
      if (cancel !== undefined) setTimeout(() => controller.abort(), cancel);
      let isRunning = true;
      let longestFrame = 0;
      let last = performance.now();
      const beat = (): void => {
        const now = performance.now();
        longestFrame = Math.max(longestFrame, now - last);
        last = now;
        if (isRunning) setTimeout(beat, 0);
      };
      beat();
      let reports = 0;
      const start = performance.now();
      const solution = await solver.solve(asked, { signal: controller.signal, onProgress: () => (reports += 1) });
      const milliseconds = performance.now() - start;
      isRunning = false;
      solver.dispose();
      const values = solution.values && [...solution.values];
      return {
        status: solution.status,
        cost: solution.cost,
        values,
        milliseconds,
        startMilliseconds,
        longestFrame,
        reports,
      };
    },
    { text: plain(model), cancel: cancelAfter },
  );
