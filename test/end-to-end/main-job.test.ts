import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import cases from '../fixtures/cases.json';
import { readDemoTable } from '../../src/generate/demo-csv';
import { OWN_KEYS, OWN_COLUMNS, type OwnKey } from '../../src/workbook/own-columns';
import type { SheetContent } from '../../src/workbook/port';
import { launch, startServer, Workbench } from './workbench-page';

const ROOT = join(__dirname, '../..');
const HEADER_ROW = 4;
const source = readDemoTable(ROOT, 'channels');
const rowOfCase = (id: string): number => HEADER_ROW + 1 + source.findIndex((row) => row['case'] === id);

let browser: Browser;
let server: { address: string; close: () => void };
let bench: Workbench;

const ownCell = (content: SheetContent, row: number, key: OwnKey): unknown => {
  const column = content.values[HEADER_ROW]!.indexOf(OWN_COLUMNS[0]!.heading);
  return content.values[row]?.[column + OWN_KEYS.indexOf(key)];
};
const columnOf = (content: SheetContent, heading: string): number =>
  content.values[HEADER_ROW]!.findIndex((cell) => String(cell).startsWith(heading));
const near = (actual: unknown, expected: number | null) => {
  if (expected === null) return;
  expect(typeof actual).toBe('number');
  expect(Math.abs((actual as number) - expected)).toBeLessThanOrEqual(Math.abs(expected) * 1e-6 + 1e-12);
};
/** The value once the sheet has it; the page calculates while we look. */
const eventually = async (read: () => Promise<unknown>, expected: unknown): Promise<void> => {
  const end = Date.now() + 15_000;
  let seen = await read();
  while (seen !== expected && Date.now() < end) {
    await new Promise((wait) => setTimeout(wait, 50));
    seen = await read();
  }
  expect(seen).toEqual(expected);
};

beforeAll(async () => {
  server = await startServer();
  browser = await launch();
  bench = await Workbench.open(browser, server.address);
}, 120_000);
afterAll(async () => {
  await browser?.close();
  server?.close();
});

describe('the whole job on the demo plan', () => {
  const sensorRow = rowOfCase('C3');

  it('opens the demo plan at start and recognises its lists', async () => {
    const text = await bench.pane();
    expect(text).toContain(`${source.length} channels on “Channels”`);
    for (const list of ['sensors', 'mounts', 'cables', 'inputs', 'limits'])
      expect(text.toLowerCase()).toContain(`${list} from “${list}”`);
  });

  it('writes its columns by one press, and the rows of the worked cases have the independent numbers', async () => {
    await bench.check();
    const content = await bench.sheet('Channels');
    // Expected values: test/fixtures/cases.json, computed independently with Python/scipy.
    for (const { id, expected } of cases.cases) {
      const row = rowOfCase(id);
      near(ownCell(content, row, 'signalToNoise'), expected.level.signal_to_noise_dB);
      near(ownCell(content, row, 'headroom'), expected.level.headroom_dB);
      near(ownCell(content, row, 'massRatio'), expected.mass.mass_ratio);
      near(ownCell(content, row, 'thermalHigh'), expected.thermal.high_percent);
      near(ownCell(content, row, 'spanLow'), expected.frequency.span_5_percent.low_Hz);
      near(ownCell(content, row, 'spanHigh'), expected.frequency.span_5_percent.high_Hz);
      expect([id, ownCell(content, row, 'verdict')]).toEqual([id, expected.verdict]);
    }
  }, 120_000);

  it('lists the failing rows first, with number, limit and what would help', async () => {
    const words = await bench.page.locator('.cw-row .cw-verdict').allInnerTexts();
    expect(words[0]).toBe('FAIL');
    expect(words.lastIndexOf('FAIL')).toBeLessThan(words.indexOf('WARN'));
    const first = await bench.page.locator('.cw-row').first().innerText();
    expect(first).toContain('limit');
  });

  it('jumps to the row that was clicked and shows its numbers', async () => {
    await bench.page.locator('.cw-row', { hasText: 'W001' }).click();
    const at = await bench.page.evaluate(() => window.channelwright.spreadsheet.selection());
    expect(at).toMatchObject({ sheet: 'Channels', range: { row: sensorRow } });
    const detail = await bench.page.innerText('.cw-detail');
    // C3: r = 5.6/20.69; the heaviest sensor that passes 0.10·20.69 − 0.8 gram.
    expect(detail).toContain('0.271');
    expect(detail).toContain('1.27');
  });

  it('follows an edit of one cell without a press, and undo takes it back', async () => {
    const before = await bench.sheet('Channels');
    const column = columnOf(before, 'Sensor type');
    const mass = async () => ownCell(await bench.sheet('Channels'), sensorRow, 'massVerdict');
    expect(await mass()).toBe('FAIL');
    await bench.type('Channels', sensorRow, column, 'Ce-10 mini');
    // By hand: 0.8 + 0.3 + 0.5 = 1.6 gram on 20.69 gram is 0.0773, within 0.10.
    await eventually(mass, 'PASS');
    near(ownCell(await bench.sheet('Channels'), sensorRow, 'massRatio'), 1.6 / 20.690142601946395);
    await bench.page.waitForFunction(() => document.querySelector('.cw-detail')?.textContent?.includes('0.0773'));
    await bench.page.click('#undo');
    await eventually(mass, 'FAIL');
    expect((await bench.sheet('Channels')).values[sensorRow]![column]).toBe('Ce-100 general');
  }, 60_000);

  it('checking again replaces its columns in place', async () => {
    const before = await bench.sheet('Channels');
    await bench.check();
    const after = await bench.sheet('Channels');
    expect(after.formulas).toEqual(before.formulas);
    expect(after.values[HEADER_ROW]).toEqual(before.values[HEADER_ROW]);
  }, 120_000);

  it('one undo takes a whole check back', async () => {
    const fresh = await Workbench.open(browser, server.address);
    const before = await fresh.sheet('Channels');
    await fresh.check();
    await fresh.page.click('#undo');
    await eventually(
      async () => (await fresh.sheet('Channels')).values[HEADER_ROW]!.length,
      before.values[HEADER_ROW]!.length,
    );
    expect((await fresh.sheet('Channels')).values).toEqual(before.values);
    await fresh.page.close();
  }, 120_000);

  it('asks nothing of any other place and reports no error', () => {
    expect(bench.asked.filter((url) => !url.startsWith(server.address) && !/^(data|blob):/.test(url))).toEqual([]);
    expect(bench.errors).toEqual([]);
  });

  it('says what it expected of a file that is no workbook, and keeps the open one', async () => {
    await bench.drop('list.xlsx', Buffer.from('not a workbook'));
    await bench.page.waitForSelector('#message:not([hidden])');
    expect(await bench.page.innerText('#message')).toMatch(/list\.xlsx was not opened\..*\.xlsx/s);
    expect(await bench.pane()).toContain('on “Channels”');
    await bench.drop('demo.xlsx', readFileSync(join(ROOT, 'assets/demo-plan.xlsx')));
    await bench.page.waitForFunction(() => document.querySelector('#file-name')?.textContent === 'demo.xlsx');
  }, 60_000);
});
