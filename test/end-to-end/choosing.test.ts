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
  // W014: a 14 gram triaxial sensor on a skin that bears 0.5 gram.
  await bench.page.click('.cw-row >> nth=1');
  await bench.page.waitForSelector('.cw-plot');
}, 180_000);
afterAll(async () => {
  await browser?.close();
  server?.close();
});

const counts = async () => (await bench.page.textContent('.cw-counts'))!.match(/\d+/g)!.map(Number);
const rowCells = async (): Promise<readonly unknown[]> => {
  const { values } = await bench.sheet('Channels');
  return values.find((line) => line.includes('W014'))!;
};

it('an open row shows its three plots, each with the same in words', async () => {
  const labels = await bench.page.locator('.cw-detail > .cw-plot svg').evaluateAll((all) => all.map((svg) => svg.getAttribute('aria-label'))); // prettier-ignore
  expect(labels).toHaveLength(3);
  expect(labels[0]).toMatch(/Level range\. .*headroom −12\.4 dB FAIL/);
  expect(labels[1]).toMatch(/Thermal deviation\. .*PASS/);
  expect(labels[2]).toMatch(/Frequency span\. .*band needed 5 Hz to 2000 Hz/);
});

it('says what a sensor must satisfy here, and which kinds remain, with the mark of each tendency', async () => {
  await bench.page.click('[data-key=envelope]');
  await bench.page.click('[data-key=technology]');
  // A part is filled once the browser has told that it is open.
  for (const key of ['envelope', 'technology'])
    await bench.page.waitForSelector(`details:has(> [data-key=${key}]) > ul li`);
  const asked = (await bench.page.locator('.cw-asked').allTextContents()).join(' ');
  // 0.52 gram is what the mass check allows beside mount and cable, as the row's own sentence says.
  expect(asked).toMatch(/0\.52 gram/);
  expect(asked).toMatch(/common practice|from memory/);
  expect(asked).not.toMatch(/undefined|NaN/);
});

it('ranks the types of the list for the row, those that pass first, and says why the others do not', async () => {
  await bench.page.click('[data-key=rank]');
  await bench.page.waitForSelector('.cw-candidates', { timeout: 60_000 });
  await bench.page.click('[data-key=candidates-more]');
  const said = await bench.page.locator('.cw-candidates > li').evaluateAll((all) => all.map((li) => li.textContent!));
  expect(said).toHaveLength(30);
  const order = said.map((text) => ['PASS', 'WARN', 'INCOMPLETE', 'FAIL'].findIndex((word) => text.includes(word)));
  expect(order).toEqual([...order].sort((a, b) => a - b));
  expect(said.filter((text) => text.includes('FAIL')).every((text) => text.includes('Why not:'))).toBe(true);
  expect(said.find((text) => text.startsWith('Ce-100 triax'))).toContain('Mass ratio');
}, 90_000);

it('lists them in the order and of the kinds that are asked for', async () => {
  const names = () => bench.page.locator('.cw-candidates > li strong').allTextContents();
  const all = await names();
  await bench.page.selectOption('[data-key=sieve-output]', 'charge');
  const charge = await names();
  expect(charge.length).toBeGreaterThan(1);
  expect(all.filter((name) => charge.includes(name))).toEqual(charge);
  await bench.page.selectOption('[data-key=sieve-order]', 'mass');
  const added = (await bench.page.locator('.cw-candidates > li').allTextContents()).map((text) => [
    ['PASS', 'WARN', 'INCOMPLETE', 'FAIL'].findIndex((word) => text.includes(word)),
    Number(/added ([\d.]+) gram/.exec(text)![1]),
  ]);
  expect(added).toEqual([...added].sort((a, b) => a[0]! - b[0]! || a[1]! - b[1]!));
  await bench.page.selectOption('[data-key=sieve-output]', '');
  await bench.page.selectOption('[data-key=sieve-order]', 'margin');
  expect(await names()).toEqual(all);
});

it('gives what to ask a supplier for as plain text, without the sensor that is there now', async () => {
  await bench.page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  await bench.page.click('[data-key=copy-asked]');
  await bench.page.waitForSelector('.cw-asked [role=status]:not(:empty)');
  const asked = await bench.page.evaluate(() => navigator.clipboard.readText());
  expect(asked).toMatch(/^Accelerometer wanted for channel W014:\n- /);
  expect(asked).toMatch(/≤ 0\.52 gram/);
  expect(asked).not.toMatch(/Ce-100|FAIL/);
});

it('compares several types in one plot', async () => {
  await bench.page.click('[data-key=candidates-plots]');
  const compared = bench.page.locator('.cw-choose .cw-plot svg');
  expect(await compared.count()).toBe(3);
  expect((await compared.first().getAttribute('aria-label'))!.match(/signal to noise/g)).toHaveLength(3);
});

it('has nothing that axe objects to', async () => {
  await bench.page.evaluate(AXE);
  const found = await bench.page.evaluate(async () => {
    const { axe } = window as unknown as { axe: { run(at: string): Promise<{ violations: { id: string }[] }> } };
    return (await axe.run('#pane')).violations.map(({ id }) => id);
  });
  expect(found).toEqual([]);
});

it('writes a chosen type with its parts into the row, the verdict follows, and one undo takes it back', async () => {
  const [before, cells] = [await counts(), await rowCells()];
  await bench.page.click('.cw-candidates > li:first-child button');
  await bench.page.waitForFunction(
    (fails) => Number(/\d+/.exec(document.querySelector('.cw-counts')!.textContent!)![0]) === fails - 1,
    before[0]!,
    { timeout: 60_000 },
  );
  const written = await rowCells();
  const user = (line: readonly unknown[]) => line.slice(0, 24);
  const changed = user(written).filter((cell, i) => cell !== user(cells)[i]);
  expect(changed).toContain('Ce-1 micro charge');
  expect(changed.length).toBeLessThanOrEqual(4);
  await bench.page.click('#undo');
  await bench.page.waitForFunction(
    (fails) => Number(/\d+/.exec(document.querySelector('.cw-counts')!.textContent!)![0]) === fails,
    before[0]!,
    { timeout: 60_000 },
  );
  expect(user(await rowCells())).toEqual(user(cells));
}, 150_000);

it('for the rows of a part says in how many a type passes, in which not, and whose parts are shown', async () => {
  await bench.page.selectOption('[data-key=choose-target]', 'part');
  await bench.page.click('[data-key=rank]');
  await bench.page.waitForSelector('.cw-candidates', { timeout: 60_000 });
  const first = (await bench.page.textContent('.cw-candidates > li:first-child'))!;
  expect(first).toMatch(/PASS \d+, .*FAIL \d+ of 65 channels; no PASS: W001/);
  expect(first).toMatch(/at W001, the worst · /);
  expect(await bench.page.textContent('.cw-choose .cw-message')).toMatch(/No type passes for W001/);
  await bench.page.selectOption('[data-key=choose-target]', 'row');
}, 90_000);

it('says what conflicts and what would help where nothing fits', async () => {
  await bench.page.click('.cw-row[aria-expanded=true]');
  await bench.page.locator('.cw-row', { hasText: 'C001' }).click();
  await bench.page.click('[data-key=rank]');
  await bench.page.waitForSelector('.cw-choose .cw-message li', { timeout: 60_000 });
  const said = (await bench.page.locator('.cw-choose .cw-message').textContent())!;
  expect(said).toContain('What would help');
  expect(said).toMatch(/without contact|local mass/i);
  expect(bench.errors).toEqual([]);
}, 90_000);
