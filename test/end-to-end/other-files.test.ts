import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { cell, demoPlaces, editedCopy } from '../entries/edited-demo';
import { launch, startServer, Workbench } from './workbench-page';

const folder = mkdtempSync(join(tmpdir(), 'channelwright-test-'));
let browser: Browser;
let server: { address: string; close: () => void };
let bench: Workbench;

const picture = async (name: string): Promise<void> => {
  if (process.env.OTHER_FILES_PICTURES)
    await bench.page.screenshot({ path: join(process.env.OTHER_FILES_PICTURES, `${name}.png`) });
};
const press = (key: string) => bench.page.click(`[data-key="${key}"]`);
const said = (text: string) =>
  bench.page.waitForFunction((part) => document.querySelector('#pane')?.textContent?.includes(part), text);
const pick = (key: string, path: string) =>
  bench.page.setInputFiles(`[data-key="${key}-file"]`, {
    name: 'other.xlsx',
    mimeType: '',
    buffer: readFileSync(path),
  });

beforeAll(async () => {
  server = await startServer();
  browser = await launch();
  bench = await Workbench.open(browser, server.address);
  await bench.check();
}, 240_000);
afterAll(async () => {
  await browser?.close();
  server?.close();
  rmSync(folder, { recursive: true, force: true });
});

describe('other files in the pane', () => {
  it('show what changed since an earlier revision, and lead to the row', async () => {
    const { rowOf, columnOf } = await demoPlaces();
    const earlier = await editedCopy(join(folder, 'earlier.xlsx'), [
      cell('Channels', rowOf('W004'), columnOf('Highest level'), 700),
      cell('Channels', rowOf('W009'), columnOf('Remarks'), 'an older remark'),
    ]);
    await press('revisions');
    await pick('compare', earlier);
    await said('Highest level: 700 g → 48 g');
    await said('Verdicts that changed: 1 (0 worse, 1 better).');
    await said('Remarks: “an older remark” → blank');
    await bench.page.locator('[data-key="compare"]').scrollIntoViewIfNeeded();
    await picture('compared');
    await press('verdicts-0');
    await bench.page.waitForFunction(async (row) => {
      const { spreadsheet } = (window as unknown as { channelwright: { spreadsheet: { selection(): Promise<{ range: { row: number } } | undefined> } } }).channelwright; // prettier-ignore
      return (await spreadsheet.selection())?.range.row === row;
    }, rowOf('W004'));
  }, 60_000);

  it('bring back what a customer typed, only where it is chosen, as one action that one undo takes back', async () => {
    const { rowOf, columnOf } = await demoPlaces();
    const [level, remarks] = [columnOf('Highest level'), columnOf('Remarks')];
    const returned = await editedCopy(join(folder, 'returned.xlsx'), [
      cell('Channels', rowOf('W004'), level, 52),
      cell('Channels', rowOf('W005'), remarks, '+1 spare wanted'),
      cell('Channels', rowOf('W006'), remarks, 'not this one'),
    ]);
    await pick('take-back', returned);
    await said('3 cells differ from the plan.');
    await press('choose-easy');
    await bench.page.uncheck('[data-key="returned-2"]');
    await bench.page.locator('[data-key="take"]').scrollIntoViewIfNeeded();
    await picture('returned');
    await press('take');
    await said('2 cells taken');
    const at = async (row: number, column: number) => {
      const { row: top, column: left, values } = await bench.sheet('Channels');
      return values[row - top]?.[column - left] ?? null;
    };
    expect(await at(rowOf('W004'), level)).toBe(52);
    expect(await at(rowOf('W005'), remarks)).toBe('+1 spare wanted');
    expect(await at(rowOf('W006'), remarks)).toBeNull();
    await said('1 cell differs from the plan.');
    await bench.page.click('#undo');
    await bench.page.waitForTimeout(1000);
    expect([await at(rowOf('W004'), level), await at(rowOf('W005'), remarks)]).toEqual([48, null]);
  }, 60_000);

  it('that are no workbook, or another one, are refused in words', async () => {
    await bench.page.setInputFiles('[data-key="compare-file"]', { name: 'x.xlsx', mimeType: '', buffer: Buffer.from('no') }); // prettier-ignore
    await said('x.xlsx could not be read.');
    const lists = join(__dirname, '../../assets/examples.xlsx');
    await pick('take-back', lists);
    await said('no sheet has the headings and channels of this list');
    await picture('refused');
    await bench.page.setViewportSize({ width: 350, height: 800 });
    await picture('narrow');
  }, 60_000);

  it('lays a sensor list with its properties in rows out on a sheet of ours, on which the formulas look sensors up', async () => {
    const counts = async () => (await bench.page.textContent('.cw-counts'))!.match(/\d+/g)!.map(Number);
    const before = await counts();
    await pick('stock', join(__dirname, '../fixtures/lists/stock/turned.xlsx'));
    await said('they were turned into columns');
    await picture('stock');
    const { values } = await bench.sheet('Sensor stock');
    expect(values.length).toBeGreaterThan(4);
    await press('check');
    await bench.ready();
    // The types of the demo are not in that list: their rows cannot be judged.
    await bench.page.waitForFunction((most) => Number(/INCOMPLETE/.test(document.querySelector('.cw-counts')!.textContent!) && document.querySelector('.cw-counts')!.textContent!.match(/\d+/g)![1]) > most, before[1]!); // prettier-ignore
    for (let step = 0; step < 2; step++) await bench.page.click('#undo');
    await bench.page.waitForFunction((all) => document.querySelector('.cw-counts')!.textContent!.match(/\d+/g)!.map(Number).join() === all, before.join(), { timeout: 60_000 }); // prettier-ignore
    const sheets = await bench.page.evaluate(() => window.channelwright.spreadsheet.sheets());
    expect(sheets.map(({ name }) => name)).not.toContain('Sensor stock');
    expect(await bench.pane()).toContain('Sensors from “Sensors”');
  }, 120_000);
});
