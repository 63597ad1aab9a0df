import type { Browser } from 'playwright-core';
import cases from '../fixtures/cases.json';
import { FOREIGN_ROWS, foreignList } from '../fixtures/foreign-list';
import { OWN_COLUMNS, OWN_KEYS, type OwnKey } from '../../src/workbook/own-columns';
import type { SheetContent } from '../../src/workbook/port';
import { launch, startServer, Workbench } from './workbench-page';

const SHEET = 'Messstellen';
const HEADER_ROW = 3;
let browser: Browser;
let server: { address: string; close: () => void };
let bench: Workbench;
let before: SheetContent;

const own = (content: SheetContent, row: number, key: OwnKey): unknown => {
  const column = content.values[HEADER_ROW - content.row]!.indexOf(OWN_COLUMNS[0]!.heading);
  return content.values[row - content.row]?.[column + OWN_KEYS.indexOf(key)];
};
const near = (actual: unknown, expected: number) => {
  expect(typeof actual).toBe('number');
  expect(Math.abs((actual as number) - expected)).toBeLessThanOrEqual(Math.abs(expected) * 1e-6);
};

beforeAll(async () => {
  const bytes = foreignList();
  server = await startServer();
  browser = await launch();
  bench = await Workbench.open(browser, server.address);
  await bench.drop('foreign.xlsx', bytes);
  await bench.page.waitForFunction(() => document.querySelector('#pane')?.textContent?.includes('on “Messstellen”'));
  before = await bench.sheet(SHEET);
}, 240_000);
afterAll(async () => {
  await browser?.close();
  server?.close();
});

describe('a list that another laboratory made and LibreOffice wrote', () => {
  it('is recognised with its title rows, German headings and other order of columns', async () => {
    expect(await bench.pane()).toContain('6 channels on “Messstellen”');
    expect(await bench.pane()).toMatch(
      /sensors from “Aufnehmer”.*mounts from “Befestigungen”.*cables from “Kabel”.*inputs from “Messeingänge”/is,
    );
  });

  it('gives the independent numbers, through kHz, m/s² and decimal commas', async () => {
    await bench.check();
    const content = await bench.sheet(SHEET);
    // Expected values: test/fixtures/cases.json, computed independently with Python/scipy.
    FOREIGN_ROWS.forEach((id, i) => {
      const row = HEADER_ROW + 1 + i;
      const { expected } = cases.cases.find((one) => one.id === id)!;
      near(own(content, row, 'signalToNoise'), expected.level.signal_to_noise_dB);
      near(own(content, row, 'headroom'), expected.level.headroom_dB);
      near(own(content, row, 'massRatio'), expected.mass.mass_ratio);
      near(own(content, row, 'thermalHigh'), expected.thermal.high_percent!);
      near(own(content, row, 'spanLow'), expected.frequency.span_5_percent.low_Hz);
      near(own(content, row, 'spanHigh'), expected.frequency.span_5_percent.high_Hz);
      expect([id, own(content, row, 'verdict')]).toEqual([id, expected.verdict]);
    });
  }, 120_000);

  it('leaves every cell of the list as it was', async () => {
    const after = await bench.sheet(SHEET);
    before.values.forEach((row, r) => row.forEach((cell, c) => expect(after.values[r]![c]).toEqual(cell)));
    before.formulas.forEach((row, r) => row.forEach((formula, c) => expect(after.formulas[r]![c]).toBe(formula)));
  });

  it('names the cell, what was read and what was expected where something is missing or has two readings', async () => {
    const content = await bench.sheet(SHEET);
    const [noMass, twoReadings] = [HEADER_ROW + 5, HEADER_ROW + 6];
    expect(own(content, noMass, 'massVerdict')).toBe('INCOMPLETE');
    expect(own(content, noMass, 'reason')).toContain('Local mass');
    expect(own(content, twoReadings, 'levelVerdict')).toBe('INCOMPLETE');
    await bench.page.click('[data-key=unread]');
    const unread = await bench.page.locator('.cw-findings').first().innerText();
    // 0-based row 9 and column L of the list hold "1,250".
    expect(unread).toContain('Messstellen!L10');
    expect(unread).toContain('1,250');
    expect(unread).toMatch(/can mean .* or .*, expected a number in g/);
  });
});
