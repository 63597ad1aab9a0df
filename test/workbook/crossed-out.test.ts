import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { writeXlsx, type Cell } from 'hucre';
import { openHeadless } from '../../src/adapters/embedded/node';
import { workbookFromFile } from '../../src/adapters/embedded/import/workbook';
import { EmbeddedSpreadsheet } from '../../src/adapters/embedded/spreadsheet';
import { officeSpreadsheet } from '../../src/adapters/office/spreadsheet';
import { openFile } from '../../src/adapters/xlsx/file-on-disk';
import { FileSpreadsheet } from '../../src/adapters/xlsx/spreadsheet';
import { FUNCTIONS } from '../../src/functions/index';
import type { Spreadsheet } from '../../src/workbook/port';
import { PlanSession } from '../../src/workbook/session';
import { FakeExcel } from '../adapters/office/fake-excel';
import { blankSheet } from '../adapters/office/fake-workbook';
import { run, temporaryFolder } from '../entries/run';

const folder = temporaryFolder();
const path = join(folder, 'list.xlsx');
const HEADINGS = ['Channel', 'Highest level [g pk]', 'Band low [Hz]', 'Band high [Hz]', 'Sensor type'];
let bytes: Uint8Array;

/** W2 and W5 are crossed out whole, of W3 one cell only. */
beforeAll(async () => {
  const names = ['W1', 'W2', 'W3', 'W4', 'W5'];
  const rows = [HEADINGS, ...names.map((name) => [name, 14, 5, 800, 'Ce-50 light'])];
  const cells = new Map<string, Partial<Cell>>();
  const cross = (row: number, column: number) =>
    cells.set(`${row},${column}`, { value: rows[row]![column], style: { font: { strikethrough: true } } });
  HEADINGS.forEach((_, column) => [2, 5].forEach((row) => cross(row, column)));
  cross(3, 1);
  bytes = await writeXlsx({ sheets: [{ name: 'List', rows, cells }] });
  writeFileSync(path, bytes);
});

const readBy = async (spreadsheet: Spreadsheet) => {
  const session = new PlanSession(spreadsheet);
  await session.read();
  const { readings } = session.judge();
  const { byRow } = session.source.judged!;
  return {
    channels: [...byRow.values()].map(({ channel }) => channel.id),
    told: readings.map(({ text }) => text).filter((text) => text.includes('crossed out')),
  };
};
const EXPECTED = {
  channels: ['W1', 'W3', 'W4'],
  told: ['Row 3 is crossed out and left out of the plan.', 'Row 6 is crossed out and left out of the plan.'],
};

describe('rows that are crossed out', () => {
  it('are left out of the plan in a file, with a word', async () => {
    const file = await openFile(
      path,
      FUNCTIONS.map(({ name }) => name),
    );
    expect(await readBy(new FileSpreadsheet(file))).toEqual(EXPECTED);
  });

  it('are left out in the grid in the same way', async () => {
    const host = await openHeadless(await workbookFromFile(bytes, 'list'));
    expect(await readBy(new EmbeddedSpreadsheet(host))).toEqual(EXPECTED);
    host.univer.dispose();
  }, 30_000);

  it('are left out in Excel in the same way, which tells of them on request', async () => {
    const file = await openFile(path, []);
    const excel = new FakeExcel();
    excel.state.sheets = [blankSheet('List')];
    excel.state.active = 'List';
    const { values, crossedOut } = file.readSheet('List');
    excel.fill('List', 0, 0, values);
    const strike = (row: number, column: number) =>
      (excel.sheet('List').looks[`${row},${column}`] = { isStruck: true });
    crossedOut!.forEach((columns, row) => columns.forEach((column) => strike(row, column)));
    // The name alone is no row.
    strike(4, 0);
    expect(await readBy(officeSpreadsheet(excel))).toEqual(EXPECTED);
  });

  it('get no verdict, and lose one that they had', async () => {
    await run(['check', path, '-o', join(folder, 'out.xlsx')]);
    const { values } = (await openFile(join(folder, 'out.xlsx'), [])).readSheet('List');
    const filled = values.map((row) => row.filter((cell, column) => column >= HEADINGS.length && cell !== null).length);
    expect(filled.map((count) => count > 0)).toEqual([true, true, false, true, true, false]);
    const again = await run(['check', join(folder, 'out.xlsx'), '--json']);
    expect((JSON.parse(again.out) as { plans: { channels: object[] }[] }).plans[0]!.channels).toHaveLength(3);
  }, 30_000);
});
