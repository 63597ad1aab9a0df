import { readFileSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { launch, startServer, Workbench } from './workbench-page';

const AXE = readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8');
let browser: Browser;
let server: { address: string; close: () => void };
let bench: Workbench;

beforeAll(async () => {
  server = await startServer();
  browser = await launch();
  bench = await Workbench.open(browser, server.address);
  await bench.check();
  await bench.page.click('[data-key=try]');
}, 180_000);
afterAll(async () => {
  await browser?.close();
  server?.close();
});

const text = (selector: string) => bench.page.textContent(selector);
const numbers = async (selector: string) => (await text(selector))!.match(/\d+/g)!.map(Number);
/** The table of counts: before, after and the difference for each verdict. */
const counted = () =>
  bench.page.locator('.cw-before-after tr').evaluateAll((rows) => rows.slice(1).map((row) => [...row.querySelectorAll('td')].map((cell) => Number(cell.textContent!.replace('−', '-'))))); // prettier-ignore
const tryIt = async (target: string, field: string, value: string) => {
  await bench.page.selectOption('#cw-try-target', target);
  await bench.page.selectOption('#cw-try-field', field);
  await bench.page.fill('#cw-try-value', value);
  await bench.page.click('[data-key=try-go]');
};
const column = async (heading: RegExp) => {
  const { values } = await bench.sheet('Channels');
  const head = values.findIndex((line) => line.some((cell) => typeof cell === 'string' && heading.test(cell)));
  const at = values[head]!.findIndex((cell) => typeof cell === 'string' && heading.test(cell));
  return values.slice(head + 1).flatMap((line) => (line[0] === null ? [] : [line[at]]));
};

it('shows the plan before and after for all rows, and writes nothing', async () => {
  const [counts, before] = [await numbers('.cw-counts'), await column(/^Temperature high/)];
  await tryIt('all', 'temperatureHigh', '45');
  await bench.page.waitForSelector('.cw-before-after');
  const table = await counted();
  expect(table.map(([was]) => was)).toEqual(counts);
  expect(table.map(([was, is, difference]) => is! - was! - difference!)).toEqual([0, 0, 0, 0]);
  expect(table.reduce((sum, [, is]) => sum + is!, 0)).toBe(287);
  expect(await column(/^Temperature high/)).toEqual(before);
}, 60_000);

it('a value that cannot be read is told with what is expected', async () => {
  await tryIt('all', 'temperatureHigh', 'warm');
  await bench.page.waitForSelector('#pane .cw-message[role=alert]:visible');
  expect(await text('#pane .cw-message[role=alert]:visible')).toMatch(/“warm” cannot be read here; expected is .*°C/);
});

it('has nothing that axe objects to', async () => {
  await bench.page.evaluate(AXE);
  const found = await bench.page.evaluate(async () => {
    const { axe } = window as unknown as { axe: { run(at: string): Promise<{ violations: { id: string }[] }> } };
    return (await axe.run('#pane')).violations.map(({ id }) => id);
  });
  expect(found).toEqual([]);
});

it('keeps the change as one step: the cells hold it, the counts are those that were shown, one undo takes it back', async () => {
  const [before, counts] = [await column(/^Temperature high/), await numbers('.cw-counts')];
  const promised = (await counted()).map(([, is]) => is);
  await bench.page.click('[data-key=try-keep]');
  const shows = (wanted: readonly (number | undefined)[]) =>
    bench.page.waitForFunction(
      (all) => document.querySelector('.cw-counts')!.textContent!.match(/\d+/g)!.map(Number).join() === all,
      wanted.join(),
      { timeout: 60_000 },
    );
  await shows(promised);
  expect(new Set(await column(/^Temperature high/))).toEqual(new Set([45]));
  expect(await bench.page.locator('.cw-before-after').count()).toBe(0);
  await bench.page.click('#undo');
  await shows(counts);
  expect(await column(/^Temperature high/)).toEqual(before);
}, 150_000);

it('is tried for the rows that are selected in the sheet, and dropped without a trace', async () => {
  await bench.page.evaluate(() =>
    window.channelwright.spreadsheet.select('Channels', { row: 7, column: 2, rows: 3, columns: 1 }),
  );
  await tryIt('selected', 'mount', 'Wax');
  await bench.page.waitForSelector('.cw-trials li');
  expect(await text('.cw-trials')).toContain('Mount = Wax in 3 rows');
  await bench.page.click('[data-key=try-drop]');
  expect(await bench.page.locator('.cw-trials').count()).toBe(0);
  expect(bench.errors).toEqual([]);
}, 60_000);
