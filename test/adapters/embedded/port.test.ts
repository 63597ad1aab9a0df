import { LocaleType, type ICellData, type IWorkbookData } from '@univerjs/core';
import { SheetsNoteModel } from '@univerjs/sheets-note';
import { Services } from '../../../src/adapters/embedded/host';
import { factsOf } from '../../../src/adapters/embedded/own-drawings';
import { isPlot } from '../../../src/workbook/drawings';
import { describePort, type PortUnderTest, type SeedSheet } from '../../workbook/port-contract';
import { openWorkbook } from './headless';

const cellOf = (typed: string | number | boolean): ICellData => {
  if (typeof typed === 'string') return typed.startsWith('=') ? { f: typed } : { v: typed, t: 1 };
  return typeof typed === 'boolean' ? { v: typed ? 1 : 0, t: 3 } : { v: typed, t: 2 };
};

const dataOf = (sheets: readonly SeedSheet[]): IWorkbookData => ({
  id: 'contract',
  name: 'contract',
  appVersion: '0.25.1',
  locale: LocaleType.EN_US,
  styles: {},
  sheetOrder: sheets.map(({ name }) => name),
  // A table needs more than data here; the adapter's own tests cover tables.
  sheets: Object.fromEntries(
    sheets.map(({ name, cells = [], merged, hiddenRow }) => [
      name,
      {
        id: name,
        name,
        rowCount: 10_000,
        columnCount: 30,
        cellData: Object.fromEntries(
          cells.map((row, r) => [
            r,
            Object.fromEntries(row.flatMap((typed, c) => (typed === null ? [] : [[c, cellOf(typed)]]))),
          ]),
        ),
        mergeData: merged
          ? [
              {
                startRow: merged.row,
                startColumn: merged.column,
                endRow: merged.row + merged.rows - 1,
                endColumn: merged.column + merged.columns - 1,
              },
            ]
          : [],
        rowData: hiddenRow === undefined ? {} : { [hiddenRow]: { hd: 1 } },
      },
    ]),
  ),
});

const open = async (sheets: readonly SeedSheet[]): Promise<PortUnderTest> => {
  const { spreadsheet, ...host } = await openWorkbook(dataOf(sheets));
  const { api, univer } = host;
  const notes = univer.__getInjector().get(SheetsNoteModel);
  await spreadsheet.calculated();
  const workbook = () => {
    const active = api.getActiveWorkbook();
    if (!active) throw new Error('no workbook');
    return active;
  };
  const idsOf = (sheet: string) => ({
    unitId: workbook().getId(),
    sheetId: workbook().getSheetByName(sheet)!.getSheetId(),
  });
  return {
    spreadsheet,
    drawingsOn: async (sheet) =>
      (factsOf(new Services(host).sheet(sheet)).drawings ?? []).map((each) =>
        isPlot(each) ? each.plot.title : each.title,
      ),
    person: {
      edit: async (sheet, row, column, entry) => {
        workbook().getSheetByName(sheet)?.getRange(row, column).setValue(entry);
        await spreadsheet.calculated();
      },
      undo: async () => {
        await workbook().undo();
        await spreadsheet.calculated();
      },
      note: (sheet, row, col, note) => {
        const { unitId, sheetId } = idsOf(sheet);
        notes.updateNote(unitId, sheetId, row, col, { id: `${row} ${col}`, row, col, note, width: 90, height: 40 });
        return Promise.resolve();
      },
    },
    noteAt: (sheet, row, col) => {
      const { unitId, sheetId } = idsOf(sheet);
      return Promise.resolve(notes.getNote(unitId, sheetId, { row, col })?.note.replace(/^Channelwright:\n/, ''));
    },
  };
};

describePort('the embedded spreadsheet', open);
