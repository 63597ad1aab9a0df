import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { pythonWith } from '../python';
import { launch, startServer, Workbench } from './workbench-page';

const AXE = readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8');
let browser: Browser;
let server: { address: string; close: () => void };
let bench: Workbench;
/** What the user's own columns of the list hold. */
let before: readonly (readonly unknown[])[];

const USERS = 24;
const list = async () => (await bench.sheet('Channels')).values.map((line) => line.slice(0, USERS));
const violations = async (): Promise<string[]> => {
  await bench.page.evaluate(AXE);
  return bench.page.evaluate(async () => {
    const { axe } = window as unknown as {
      axe: { run(at: string): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
    };
    const { violations: found } = await axe.run('#pane');
    return found.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 120)}`));
  });
};
const focused = () => bench.page.evaluate(() => document.activeElement?.getAttribute('data-key'));

beforeAll(async () => {
  server = await startServer();
  browser = await launch();
  bench = await Workbench.open(browser, server.address);
  // Four pieces of a type of which the plan needs more.
  const { values, row, column } = await bench.sheet('Sensors');
  const heading = values.findIndex((line) => line.includes('In stock'));
  const quantity = values[heading]!.indexOf('In stock');
  const at = values.findIndex((line) => line.includes('Ce-1000 seismic'));
  await bench.page.evaluate(
    ([r, c]) =>
      window.channelwright.spreadsheet.apply([{ kind: 'cells', sheet: 'Sensors', row: r, column: c, cells: [[4]] }], {
        label: 'Count again',
      }),
    [row + at, column + quantity] as const,
  );
  await bench.check();
  before = await list();
  await bench.page.click('[data-key=assign]');
  await bench.page.waitForSelector('[data-key=assign-start]');
}, 180_000);
afterAll(async () => {
  await browser?.close();
  server?.close();
});

it('loads the solver only when it is asked for, and says what was typed wrongly', async () => {
  expect(bench.asked.filter((url) => /solver\.js|highs\.wasm/.test(url))).toEqual([]);
  await bench.page.fill('[data-key=assign-spare]', 'some');
  await bench.page.click('[data-key=assign-start]');
  expect(await bench.page.textContent('.cw-assign [role=alert]')).toContain('a number from 0 to 99');
  expect(await bench.page.getAttribute('[data-key=assign-spare]', 'aria-invalid')).toBe('true');
  await bench.page.fill('[data-key=assign-spare]', '5');
  expect(await bench.page.textContent('.cw-assign [role=alert]')).toBe('');
}, 30_000);

it('ends the worker when a person cancels, says so, and keeps the keyboard where it was', async () => {
  await bench.page.selectOption('[data-key=assign-mixing]', 'fewest');
  await bench.page.click('[data-key=assign-start]');
  await bench.page.getByText('Looking for the best assignment', { exact: true }).waitFor({ timeout: 60_000 });
  expect(bench.page.workers()).toHaveLength(1);
  expect(await bench.page.textContent('.cw-assign-clock')).toMatch(/\d+ s/);
  await bench.page.focus('[data-key=assign-cancel]');
  await bench.page.keyboard.press('Enter');
  await bench.page.waitForSelector('[data-key=assign-cancel]', { state: 'detached' });
  expect(await bench.page.textContent('.cw-assign-said')).toContain('Nothing was assigned');
  expect(await focused()).toBe('assign-start');
  for (let i = 0; i < 50 && bench.page.workers().length > 0; i++) await bench.page.waitForTimeout(100);
  expect(bench.page.workers()).toHaveLength(0);
}, 120_000);

it('says who is left out, of what more is needed, and what is used of each type; nothing is written yet', async () => {
  await bench.page.selectOption('[data-key=assign-mixing]', 'any');
  await bench.page.uncheck('[data-key=assign-free-cable]');
  await bench.page.uncheck('[data-key=assign-free-input]');
  await bench.page.click('[data-key=assign-start]');
  await bench.page.waitForSelector('[data-key=assign-write]', { timeout: 120_000 });
  const said = (await bench.page.textContent('.cw-assign-result'))!;
  expect(said).toMatch(/\d+ of 287 channels have a sensor/);
  expect(said).toContain('is proven');
  expect(said).toMatch(/The least that is missing: .*\d+ more of type “Ce-1000 seismic”/);
  expect(said).toMatch(/Left out, since stock does not reach \(\d+\)/);
  const uses = await bench.page.locator('.cw-assign-uses tbody tr').evaluateAll((rows) => rows.map((row) => [...row.children].map((cell) => cell.textContent!))); // prettier-ignore
  for (const [, used, stock, kept, left] of uses) {
    // 5 % rounded up, as the hint says.
    expect(Number(kept)).toBe(Math.ceil(0.05 * Number(stock)));
    expect(Number(used) + Number(kept) + Number(left)).toBe(Number(stock));
  }
  expect(uses.find(([type]) => type === 'Ce-1000 seismic')!.slice(1)).toEqual(['3', '4', '1', '0']);
  expect(await list()).toEqual(before);
}, 150_000);

it('has nothing that axe objects to, with every part open', async () => {
  for (const key of ['assign-rows', 'assign-objective']) await bench.page.click(`[data-key=${key}]`);
  await bench.page.waitForSelector('.cw-assign-rows');
  expect(await violations()).toEqual([]);
}, 60_000);

it('writes the choice as one action; the verdicts follow, and one undo takes it back', async () => {
  const fails = async () => Number(/\d+/.exec((await bench.page.textContent('[data-key=count-FAIL]'))!)![0]);
  const failed = await fails();
  await bench.page.click('[data-key=assign-write]');
  await bench.page.waitForSelector('[data-key=assign-write]', { state: 'detached', timeout: 120_000 });
  expect(await bench.page.textContent('.cw-assign-result')).toContain('One undo takes all of it back');
  await bench.page.waitForFunction((n) => Number(/\d+/.exec(document.querySelector('[data-key=count-FAIL]')!.textContent!)![0]) < n, failed); // prettier-ignore
  const seismic = (await list()).filter((line) => line.includes('Ce-1000 seismic')).length;
  expect(seismic).toBeGreaterThanOrEqual(3);
  expect(await list()).not.toEqual(before);
  await bench.page.click('#undo');
  await bench.page.waitForSelector('[data-key=assign-write]', { timeout: 120_000 });
  expect(await list()).toEqual(before);
  expect(await fails()).toBe(failed);
  expect(bench.errors).toEqual([]);
}, 200_000);

it('gives rows the pieces of a list with one row per serial number, beside the types and with the same undo', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'channelwright-pieces-'));
  const path = join(folder, 'pieces.xlsx');
  execFileSync(pythonWith('openpyxl') ?? 'python3', [join(__dirname, '../fixtures/serials/make.py'), path]);
  await bench.drop('pieces.xlsx', readFileSync(path));
  rmSync(folder, { recursive: true });
  await bench.page.waitForFunction(() => document.querySelector('#pane')!.textContent!.includes('8 channels on'));
  await bench.ready();
  const names = async () =>
    (await bench.sheet('Channels')).values.slice(1).map((line) => [line[0], line[14], line[15]]);
  const asTyped = await names();
  await bench.page.fill('[data-key=assign-spare]', '0');
  await bench.page.click('[data-key=assign-start]');
  await bench.page.waitForSelector('[data-key=assign-write]', { timeout: 60_000 });
  const said = (await bench.page.textContent('.cw-assign-result'))!;
  expect(said).toContain('2 of 6 pieces of type “Ce-100” are due for calibration before the end of the test on 2027-03-31'); // prettier-ignore
  await bench.page.waitForSelector('.cw-assign-rows');
  expect(await bench.page.textContent('.cw-assign-rows')).toContain('serial no. T-1, axis 3');
  await bench.page.click('[data-key=assign-write]');
  await bench.page.waitForSelector('[data-key=assign-write]', { state: 'detached', timeout: 60_000 });
  // By hand, as the test of the command says why.
  expect(await names()).toEqual([
    ['C1', 'Ce-100', 'S2'],
    ['C2', 'Ce-100', 's3'],
    ['C3', 'Ce-100', 'S10'],
    ['C4', 'Ce-100', 20417],
    ['T1', 'Ce-T', 'T-1'],
    ['T2', 'Ce-T', 'T-1'],
    ['T3', 'Ce-T', 'T-1'],
    ['C5', 'Ce-T', 'T-2'],
  ]);
  await bench.page.click('#undo');
  await bench.page.waitForSelector('[data-key=assign-write]', { timeout: 60_000 });
  expect(await names()).toEqual(asTyped);
  expect(bench.errors).toEqual([]);
}, 120_000);
