import { officeSpreadsheet } from '../../../src/adapters/office/spreadsheet';
import { describePort, type SeedSheet } from '../../workbook/port-contract';
import { FakeExcel, NEWEST, OLDEST } from './fake-excel';
import { blankSheet } from './fake-workbook';

const open = (version: string) => (sheets: readonly SeedSheet[]) => {
  const excel = new FakeExcel(version);
  excel.state.sheets = sheets.map(({ name }) => blankSheet(name));
  excel.state.active = sheets[0]?.name ?? '';
  for (const { name, cells, table, merged, hiddenRow } of sheets) {
    excel.fill(name, 0, 0, cells ?? []);
    if (table) excel.sheet(name).tables.push(table);
    if (merged) excel.sheet(name).merged.push(merged);
    if (hiddenRow !== undefined) excel.sheet(name).hiddenRows.push(hiddenRow);
  }
  return Promise.resolve({
    spreadsheet: officeSpreadsheet(excel),
    person: {
      edit: (name: string, row: number, column: number, entry: unknown) => excel.edit(name, row, column, entry),
      undo: () => Promise.resolve(excel.undo()),
      note: (name: string, row: number, column: number, content: string) =>
        Promise.resolve(void excel.sheet(name).notes.push({ row, column, content })),
      protect: (name: string) => Promise.resolve(void (excel.sheet(name).isProtected = true)),
    },
    countRules: (name: string) => Promise.resolve(excel.sheet(name).rules.length),
    drawingsOn: (name: string) =>
      Promise.resolve(excel.sheet(name).drawings.map(({ looks }) => looks.title ?? looks.words?.split('.')[0] ?? '')),
    noteAt: (name: string, row: number, column: number) =>
      Promise.resolve(
        excel
          .sheet(name)
          .notes.find((note) => note.row === row && note.column === column)
          ?.content.replace(/^Channelwright:\n/, ''),
      ),
  });
};

describePort('Office.js of today', open(NEWEST));
// What the manifest demands: no notes, no table.resize, no merged areas, no source in change events, no undo groups.
describePort('the oldest Office.js we accept', (sheets) =>
  // Table columns stay outside there, so that version opens without tables.
  open(OLDEST)(sheets.map((sheet) => ({ ...sheet, table: undefined }))),
);
