import {
  BooleanNumber,
  mergeWorksheetSnapshotWithDefault,
  type IColumnData,
  type IMutationInfo,
  type IRange,
  type IWorksheetData,
  type Nullable,
  type Worksheet,
} from '@univerjs/core';
import {
  InsertSheetMutation,
  RemoveSheetMutation,
  SetColDataMutation,
  SetWorksheetColWidthMutation,
} from '@univerjs/sheets';
import { RemoveNoteMutation, SheetsNoteModel, UpdateNoteMutation } from '@univerjs/sheets-note';
import { SetSheetTableMutation, TableColumnDataTypeEnum, TableManager } from '@univerjs/sheets-table';
import { isOwnNote, noteInTheWay, signedNote } from '../../workbook/own-note';
import { HostProblem, type Change, type RangeAddress, type ReadingSheet } from '../../workbook/port';
import type { Action } from './action';
import { pixelsOfWidth } from './import/sheets';

type Of<Kind extends Change['kind']> = Extract<Change, { kind: Kind }>;

export const rangeOf = ({ row, column, rows, columns }: RangeAddress): IRange => ({
  startRow: row,
  startColumn: column,
  endRow: row + rows - 1,
  endColumn: column + columns - 1,
});

/** The file format counts the cell's padding into a width; a person counts characters. */
const PADDING = 5 / 7;

export const setWidth = (action: Action, sheet: Worksheet, change: Of<'width'>): void => {
  const at = { unitId: action.unitId, subUnitId: sheet.getSheetId() };
  const { column, columns, characters } = change;
  const ranges = [rangeOf({ row: 0, column, rows: sheet.getRowCount(), columns })];
  const formerWidths: Record<number, number> = {};
  const formerData: Record<number, Nullable<IColumnData>> = {};
  for (let c = column; c < column + columns; c++) {
    formerWidths[c] = sheet.getColumnWidth(c);
    formerData[c] = structuredClone(sheet.getColumnManager().getColumn(c) ?? null);
  }
  action.run(
    {
      id: SetWorksheetColWidthMutation.id,
      params: { ...at, ranges, colWidth: pixelsOfWidth(characters + PADDING) },
    },
    // The first tells the grid to redraw, the second restores a column that never had a width of its own.
    [
      { id: SetWorksheetColWidthMutation.id, params: { ...at, ranges, colWidth: formerWidths } },
      { id: SetColDataMutation.id, params: { ...at, columnData: formerData } },
    ],
  );
};

const NOTE_SIZE = { width: 260, height: 110 };
let notesMade = 0;

export const setNote = (action: Action, sheet: Worksheet, row: number, col: number, text: string | null): void => {
  const at = { unitId: action.unitId, sheetId: sheet.getSheetId(), row, col };
  const former = action.services.injector.get(SheetsNoteModel).getNote(action.unitId, sheet.getSheetId(), { row, col });
  const isForeign = former !== undefined && former !== null && !isOwnNote({ text: former.note });
  if (text === null && (!former || isForeign)) return;
  if (isForeign) throw noteInTheWay(sheet.getName(), row, col);
  const remove = (noteId?: string): IMutationInfo => ({ id: RemoveNoteMutation.id, params: { ...at, noteId } });
  const put = (note: object): IMutationInfo => ({ id: UpdateNoteMutation.id, params: { ...at, note } });
  const back = former ? [remove(), put({ ...former })] : [remove()];
  if (text === null) return action.run(remove(former?.id), back);
  const size = former ? { width: former.width, height: former.height } : NOTE_SIZE;
  const id = former?.id ?? `chan-note-${++notesMade}`;
  action.run(put({ id, row, col, note: signedNote(text), show: false, ...size }), back);
};

export const clearNotes = (action: Action, sheet: Worksheet, range: RangeAddress): void => {
  const notes = action.services.injector.get(SheetsNoteModel).getSheetNotes(action.unitId, sheet.getSheetId());
  const { row, column, rows, columns } = range;
  for (const note of [...(notes?.values() ?? [])])
    if (note.row >= row && note.row < row + rows && note.col >= column && note.col < column + columns)
      setNote(action, sheet, note.row, note.col, null);
};

const ROWS = 400;
const COLUMNS = 60;
let sheetsMade = 0;

const ACCENT = '#0f4c4a';

/** A sheet to be read, as it will be in the file. */
const readingSheet = (reading: ReadingSheet): Partial<IWorksheetData> => ({
  showGridlines: BooleanNumber.FALSE,
  tabColor: ACCENT,
  custom: { reading },
});

export const makeSheet = (action: Action, { name, reading }: Of<'sheet'>): void => {
  const workbook = action.services.workbook();
  if (workbook.getSheetBySheetName(name)) return;
  const sheets = workbook.getSheets();
  const ids = new Set(sheets.map((sheet) => sheet.getSheetId()));
  let id: string;
  do id = `chan-sheet-${++sheetsMade}`;
  while (ids.has(id));
  const unitId = action.unitId;
  const sheet = mergeWorksheetSnapshotWithDefault({
    id,
    name,
    rowCount: ROWS,
    columnCount: COLUMNS,
    ...(reading && readingSheet(reading)),
  });
  action.run({ id: InsertSheetMutation.id, params: { unitId, index: sheets.length, sheet } }, [
    { id: RemoveSheetMutation.id, params: { unitId, subUnitId: id, subUnitName: name } },
  ]);
};

export const extendTable = (action: Action, sheet: Worksheet, change: Of<'extend-table'>): void => {
  const tables = action.services.injector.get(TableManager).getTablesBySubunitId(action.unitId, sheet.getSheetId());
  const table = tables.find((each) => each.getDisplayName() === change.table);
  if (!table) throw new HostProblem(`The sheet "${change.sheet}" has no table "${change.table}".`, 'not-found');
  const { startRow, endColumn } = table.getRange();
  const index = endColumn + 1;
  const count = change.columns;
  const columnsJson = Array.from({ length: count }, (_, i) => ({
    id: `${table.getId()}-chan-${index + i}`,
    displayName: String(sheet.getCellRaw(startRow, index + i)?.v ?? `Column ${index + i + 1}`),
    dataType: TableColumnDataTypeEnum.None,
    formula: '',
    meta: {},
    style: {},
  }));
  // Setting the range alone would put the new columns before the last one and under other names.
  const step = (operationType: 'insert' | 'delete'): IMutationInfo => ({
    id: SetSheetTableMutation.id,
    params: {
      unitId: action.unitId,
      subUnitId: sheet.getSheetId(),
      tableId: table.getId(),
      config: { rowColOperation: { operationType, rowColType: 'column', index, count, columnsJson } },
    },
  });
  action.run(step('insert'), [step('delete')]);
};
