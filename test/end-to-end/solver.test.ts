import { resolve } from 'node:path';
import type { Browser } from 'playwright-core';
import { nodeAssigner } from '../../src/adapters/solver/node-assigner';
import { DEFAULT_LIMITS } from '../../src/plan/limits';
import { assignInPage, gotten, openAssignerPage, randomQuestion } from './assigner-page';
import { launch, startServer } from './workbench-page';

const root = resolve(__dirname, '../..');
jest.setTimeout(90_000);

describe('assigning in a worker of the page', () => {
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

  it('gives every channel what Node gives it, under a policy that lets only the worker compile', async () => {
    const page = await openAssignerPage(root, browser, server.address);
    const question = randomQuestion(120, 60, { allowWarn: true, pinned: [], spare: 0.1 });
    const { channels, stock, options } = question;
    const expected = await nodeAssigner(channels, stock, DEFAULT_LIMITS, options);
    const found = await assignInPage(page, question);
    expect(expected.assigned.length).toBeGreaterThan(20);
    expect([found.status, found.isOwn, found.unserved]).toEqual(['solved', true, expected.unserved.length]);
    expect(found.steps.slice(0, 2)).toEqual(['judging', 'solving']);
    expect(found.cost).toBeCloseTo(expected.cost, 9);
    expect(found.gotten).toEqual(gotten(expected.assigned));
    const compile = () => WebAssembly.compile(new Uint8Array([0, 97, 115, 109, 1, 0, 0, 0])).then(() => 'compiled', (error: Error) => error.name); // prettier-ignore
    expect(await page.evaluate(compile)).toBe('CompileError');
    await page.close();
  });

  it('ends at once when a person cancels while types are judged, and starts afresh with the next question', async () => {
    const page = await openAssignerPage(root, browser, server.address);
    const cancelled = await assignInPage(page, randomQuestion(1000, 400), 600);
    expect([cancelled.status, cancelled.assigned]).toEqual(['cancelled', []]);
    for (let i = 0; i < 50 && page.workers().length > 0; i++) await page.waitForTimeout(100);
    expect(page.workers()).toHaveLength(0);
    expect((await assignInPage(page, randomQuestion(30, 20))).status).toBe('solved');
    await page.close();
  });
});
