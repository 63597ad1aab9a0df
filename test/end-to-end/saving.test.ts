import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { FUniver } from '@univerjs/core/lib/facade';
import type {} from '@univerjs/sheets/lib/facade';
import { unzipSync } from 'fflate';
import type { Browser } from 'playwright-core';
import { nodeCodec } from '../../src/adapters/xlsx/codec-node';
import { openWorkbook } from '../../src/adapters/xlsx/workbook-file';
import { FUNCTIONS } from '../../src/functions/index';
import { cellAddress } from '../../src/workbook/address';
import { OWN_COLUMNS } from '../../src/workbook/own-columns';
import type { SheetContent } from '../../src/workbook/port';
import { pythonWith } from '../python';
import { describeAddedSheets } from './added-sheets';
import { MACROS, plannersWorkbook, withMacros } from './saving-workbook';
import { launch, startServer, Workbench } from './workbench-page';

const FIRST_HEADING = OWN_COLUMNS[0]!.heading;
/** "Highest level" of the first channel, and what is typed over it. */
const EDITED = { row: 1, column: 4, value: 12.5 };

let browser: Browser;
let server: { address: string; close: () => void };
let bench: Workbench;
let original: Uint8Array;
let saved: Uint8Array;
let shown: SheetContent;
let said: string;
/** Comma, quotes, and the number that means UTF-8 in LibreOffice's text filter. */
const UTF8_CSV = 'csv:Text - txt - csv (StarCalc):44,34,76';
const folder = mkdtempSync(join(tmpdir(), 'saving-'));

const openFile = async (name: string, bytes: Uint8Array) => {
  await bench.drop(name, Buffer.from(bytes));
  await bench.page.waitForFunction((file) => document.querySelector('#file-name')?.textContent === file, name);
  await bench.page.waitForSelector('#cover', { state: 'hidden' });
  await bench.ready();
};
const takeDownload = async (press: () => Promise<unknown>) => {
  const [download] = await Promise.all([bench.page.waitForEvent('download'), press()]);
  const path = join(folder, download.suggestedFilename());
  await download.saveAs(path);
  await bench.page.waitForSelector('#cover', { state: 'hidden' });
  return { name: download.suggestedFilename(), bytes: new Uint8Array(readFileSync(path)), path };
};
const message = () => bench.page.innerText('#message-text');
const read = (bytes: Uint8Array, sheet: string) =>
  openWorkbook(bytes, { codec: nodeCodec, functionNames: FUNCTIONS.map(({ name }) => name) }).readSheet(sheet);
const ownColumn = (content: SheetContent): number =>
  content.column + content.values[0]!.findIndex((cell) => cell === FIRST_HEADING);
const csvFields = (line: string): string[] =>
  [...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)].map(([, quoted, plain]) =>
    quoted === undefined ? plain! : quoted.replaceAll('""', '"'),
  );
/** Bold cells of Totals, their font, and that of the heading that was bold before. */
const LOOKS = `
import json, sys
from openpyxl import load_workbook
book = load_workbook(sys.argv[1])
a, b = book['Totals']['A1'].font, book['Totals']['A2'].font
print(json.dumps([a.b, b.b, a.name, a.sz, book['Channels']['A1'].font.b]))
`;
const python = pythonWith('openpyxl') ?? 'python3';
const text = (bytes: Uint8Array | undefined) => new TextDecoder().decode(bytes);

beforeAll(async () => {
  original = plannersWorkbook();
  server = await startServer();
  browser = await launch();
  bench = await Workbench.open(browser, server.address);
  await openFile('plan.xlsx', original);
}, 240_000);
afterAll(async () => {
  await browser?.close();
  server?.close();
  rmSync(folder, { recursive: true, force: true });
});

describe('a copy of the opened workbook', () => {
  it('is written by one press, and says what was changed', async () => {
    await bench.check();
    await bench.type('Channels', EDITED.row, EDITED.column, String(EDITED.value));
    await bench.page.waitForTimeout(500);
    const file = await takeDownload(() => bench.page.click('#save'));
    saved = file.bytes;
    said = await message();
    shown = await bench.sheet('Channels');
    const ours = shown.values.length * OWN_COLUMNS.length;
    expect(file.name).toBe('plan (planned).xlsx');
    expect(said).toContain('plan (planned).xlsx: 1 cell of yours changed');
    expect(Number(/(\d+) cells of ours/.exec(said)?.[1])).toBeGreaterThan(ours / 2);
    expect(Number(/(\d+) cells of ours/.exec(said)?.[1])).toBeLessThanOrEqual(ours);
    expect(said).toContain('2 formulas of yours have their new value');
  }, 120_000);

  it('has every other part byte for byte: chart, comment, the other sheets', () => {
    const [before, after] = [unzipSync(original), unzipSync(saved)];
    const touched = Object.keys(after).filter(
      (name) => !before[name] || Buffer.compare(before[name], after[name]!) !== 0,
    );
    const sheets = [...text(before['xl/workbook.xml']).matchAll(/<sheet [^>]*name="([^"]+)"/g)].map(([, name]) => name);
    const part = (sheet: string) => `xl/worksheets/sheet${sheets.indexOf(sheet) + 1}.xml`;
    expect(touched.sort()).toEqual([part('Channels'), part('Totals'), 'xl/styles.xml'].sort());
    expect(Object.keys(before).filter((name) => !after[name])).toEqual([]);
    expect(Object.keys(after)).toEqual(expect.arrayContaining(['xl/charts/chart1.xml']));
    const plan = text(after[part('Channels')]);
    for (const kept of [
      '<dataValidation ',
      '<pageSetup ',
      '<oddFooter>',
      'operator="greaterThan"',
      '<drawing ',
      '<legacyDrawing ',
    ])
      expect(plan).toContain(kept);
  });

  it('has the user’s cells as they were but for the edited one', () => {
    for (const sheet of ['Channels', 'Sensors', 'Totals']) {
      const [before, after] = [read(original, sheet), read(saved, sheet)];
      before.values.forEach((line, r) =>
        line.forEach((cell, c) => {
          const isEdited = sheet === 'Channels' && r === EDITED.row && c === EDITED.column;
          if (before.formulas[r]![c] === '') expect(after.values[r]![c]).toEqual(isEdited ? EDITED.value : cell);
          expect(after.formulas[r]![c]).toBe(before.formulas[r]![c]);
        }),
      );
    }
    // Twice the first level, as the sheet's own formula says.
    expect(read(saved, 'Totals').values[1]![1]).toBe(2 * EDITED.value);
  });

  it('stores our formulas by their stored names, with the values the grid shows', () => {
    const sheets = unzipSync(saved);
    expect(text(sheets['xl/worksheets/sheet1.xml'])).toContain('_xldudf_CHAN_');
    expect(text(sheets['xl/worksheets/sheet1.xml'])).not.toMatch(/<f>[^<]*CHAN\./);
    const after = read(saved, 'Channels');
    expect(ownColumn(after)).toBe(ownColumn(shown));
    expect(after.formulas).toEqual(shown.formulas);
    shown.values.forEach((line, r) =>
      line.slice(ownColumn(shown)).forEach((cell, i) => {
        const stored = after.values[r]![ownColumn(after) + i];
        expect([r, i, stored === '' ? null : stored]).toEqual([r, i, cell]);
      }),
    );
  });

  it('shows its stored values in LibreOffice', () => {
    const path = join(folder, 'shown.xlsx');
    writeFileSync(path, saved);
    const profile = `-env:UserInstallation=file://${join(folder, 'profile')}`;
    execFileSync('soffice', [profile, '--headless', '--convert-to', UTF8_CSV, '--outdir', folder, path], {
      stdio: 'ignore',
    });
    const lines = readFileSync(join(folder, 'shown.csv'), 'utf8').trimEnd().split('\n').map(csvFields);
    const first = ownColumn(shown);
    expect(lines[0]![first]).toBe(FIRST_HEADING);
    expect(lines).toHaveLength(shown.values.length);
    let compared = 0;
    shown.values.slice(1).forEach((line, i) =>
      line.slice(first).forEach((cell, c) => {
        const field = lines[i + 1]![first + c]!;
        // LibreOffice asks the add-in about a stored error or an empty text; every other value it shows as stored.
        if (cell === null || typeof cell === 'object') return;
        compared += 1;
        if (typeof cell !== 'number') return expect(field).toBe(cell);
        // As shown: rounded to the digits of our number format.
        const digits = OWN_COLUMNS[c]!.numberFormat!.split('.')[1]?.length ?? 0;
        expect(field.split('.')[1]?.length ?? 0).toBe(digits);
        expect(Math.abs(Number(field) - cell)).toBeLessThanOrEqual(0.5000001 * 10 ** -digits);
      }),
    );
    expect(compared).toBeGreaterThan(200);
  }, 120_000);

  it('opens again with our columns in place, and an unedited copy of it has no change', async () => {
    await openFile('plan (planned).xlsx', saved);
    await bench.page.waitForSelector('.cw-counts');
    const again = await takeDownload(() => bench.page.keyboard.press('Control+s'));
    expect(again.name).toBe('plan (planned).xlsx');
    expect(await message()).toContain('no cells of yours changed, no cells of ours written');
    expect(Buffer.compare(again.bytes, saved)).toBe(0);
    await bench.check();
    const third = await takeDownload(() => bench.page.click('#save'));
    expect(await message()).toContain('no cells of yours changed, no cells of ours written');
    expect(ownColumn(read(third.bytes, 'Channels'))).toBe(ownColumn(shown));
  }, 120_000);

  it('keeps the macros and the ending of a workbook that has them', async () => {
    await openFile('tools.xlsm', withMacros(original));
    await bench.check();
    const { name, bytes } = await takeDownload(() => bench.page.click('#save'));
    expect(name).toBe('tools (planned).xlsm');
    const parts = unzipSync(bytes);
    expect(Buffer.compare(parts['xl/vbaProject.bin']!, MACROS)).toBe(0);
    expect(text(parts['[Content_Types].xml'])).toContain('sheet.macroEnabled.main+xml');
  }, 120_000);
});

describeAddedSheets({ bench: () => bench, original: () => original, openFile, takeDownload, message, read });

describe('a workbook that was arranged anew', () => {
  const insertRow = () =>
    bench.page.evaluate(() => {
      const { grid } = window.channelwright as unknown as { grid: FUniver };
      grid.getActiveWorkbook()!.getSheetByName('Channels')!.insertRows(3, 1);
    });

  it('is offered as a new workbook, with what would be lost by name', async () => {
    await openFile('tools.xlsm', withMacros(original));
    await bench.check();
    await insertRow();
    await bench.page.click('#save');
    await bench.page.waitForSelector('#offer:not([hidden])');
    expect(await bench.page.innerText('#offer-reasons')).toBe('Rows were inserted on “Channels”.');
    const lost = (await bench.page.locator('#offer-lost li').allInnerTexts()).sort();
    expect(lost).toEqual(['charts', 'conditional formats', 'macros', 'print set-up', 'validation of entries']);
    await bench.page.click('#offer-cancel');
    expect(await bench.page.isVisible('#offer')).toBe(false);
    expect(await bench.page.isVisible('#message')).toBe(false);
  }, 120_000);

  it('becomes a workbook of its own with values, formulas, merges and notes', async () => {
    const grid = await bench.sheet('Channels');
    await bench.page.click('#save');
    const { name, bytes } = await takeDownload(() => bench.page.click('#offer-save'));
    expect(name).toBe('tools (new workbook).xlsx');
    const made = read(bytes, 'Channels');
    grid.values.forEach((line, r) =>
      line.forEach((cell, c) => {
        const at = cellAddress(r, c);
        expect([at, made.values[r]?.[c] || null]).toEqual([at, cell || null]);
        expect([at, made.formulas[r]?.[c] ?? '']).toEqual([at, grid.formulas[r]![c]]);
      }),
    );
    expect(read(bytes, 'Totals').merged).toEqual([{ row: 4, column: 0, rows: 1, columns: 3 }]);
    expect(read(bytes, 'Totals').values[2]![1]).toBe('00120');
    const parts = unzipSync(bytes);
    expect(
      Object.entries(parts).some(([part, xml]) => /comments/.test(part) && text(xml).includes('Agreed with')),
    ).toBe(true);
    expect(text(parts['xl/workbook.xml'])).toContain('HighestLevels');
    await openFile('made.xlsx', bytes);
    await bench.page.waitForSelector('.cw-counts');
  }, 120_000);

  it('can be saved the plain way once the step is undone', async () => {
    await openFile('plan.xlsx', original);
    await insertRow();
    await bench.page.click('#undo');
    await bench.page.waitForTimeout(500);
    await takeDownload(() => bench.page.click('#save'));
    expect(await message()).toContain('no cells of yours changed');
  }, 120_000);
});

describe('looks given by hand', () => {
  it('are in the copy, and a typed date keeps its format', async () => {
    await openFile('plan.xlsx', original);
    await bench.type('Totals', 8, 1, '2026-05-01');
    await bench.page.waitForTimeout(500);
    await bench.page.evaluate(() =>
      window.channelwright.spreadsheet.select('Totals', { row: 0, column: 0, rows: 1, columns: 1 }),
    );
    await bench.page.keyboard.press('Control+b');
    await bench.page.waitForTimeout(500);
    const { bytes, path } = await takeDownload(() => bench.page.click('#save'));
    expect(await message()).toMatch(/1 cell of yours changed.*\d cells? of yours looks? as here/);
    expect(await message()).not.toContain('although they were changed here');
    const shown = execFileSync(python, ['-W', 'ignore', '-c', LOOKS, path], { encoding: 'utf8' });
    expect(JSON.parse(shown)).toEqual([true, false, 'Calibri', 11, true]);
    const { values, dates } = read(bytes, 'Totals');
    // Days from the last of 1899 to the first of May 2026, as ISO 29500 counts dates.
    expect(values[8]![1]).toBe((Date.UTC(2026, 4, 1) - Date.UTC(1899, 11, 30)) / 86_400_000);
    expect(dates.get('B9')).toMatch(/^2026-05-01/);
  }, 60_000);
});

describe('what the copy cannot take', () => {
  it('is a cell of a formula that fills several: nothing is written, and the reason is said', async () => {
    await openFile('plan.xlsx', original);
    await bench.type('Totals', 0, 4, '5');
    await bench.page.waitForTimeout(500);
    let downloads = 0;
    bench.page.on('download', () => (downloads += 1));
    await bench.page.click('#save');
    await bench.page.waitForSelector('#message:not([hidden])');
    expect(await message()).toBe(
      'Nothing was saved. Cell E1 of sheet Totals belongs to a formula that fills several cells.',
    );
    expect((await bench.sheet('Totals')).values[0]![4]).toBe(5);
    expect(downloads).toBe(0);
  }, 60_000);

  it('had no error on the page', () => expect(bench.errors).toEqual([]));
});
