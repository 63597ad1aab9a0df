import type { IWorkbookData } from '@univerjs/core';
import type { Cell, Sheet, TableDefinition, Workbook } from 'hucre';
import { isOwnNote, signedNote } from '../../../workbook/own-note';
import { formulaFromFile } from './formula-text';
import { rangeFromFile, rulesFromFile } from './rules';
import type { ColorReader } from './styles';

const NOTE_WIDTH = 240;
const NOTE_HEIGHT = 100;

/** The grid keeps no authors, so that our notes say in their text whose they are. */
const inGrid = ({ author, text }: NonNullable<Cell['comment']>): string =>
  author !== undefined && isOwnNote({ author, text }) && !isOwnNote({ text }) ? signedNote(text) : text;

const notes = (sheet: Sheet) => {
  const found: Record<number, Record<number, object>> = {};
  for (const [key, cell] of sheet.cells ?? []) {
    if (!cell.comment) continue;
    const [row = 0, col = 0] = key.split(',').map(Number);
    const note = {
      id: `note-${row}-${col}`,
      row,
      col,
      note: inGrid(cell.comment),
      width: NOTE_WIDTH,
      height: NOTE_HEIGHT,
    };
    (found[row] ??= {})[col] = { ...note, show: false };
  }
  return found;
};

/** Headings of a table come from the sheet: the file's own list may be older than the cells. */
const table = (definition: TableDefinition, index: number, sheet: Sheet, sheetId: string) => {
  if (!definition.range) return [];
  const range = rangeFromFile(definition.range);
  const headings = definition.columns.map(({ name }, i) =>
    String(sheet.rows[range.startRow]?.[range.startColumn + i] ?? name),
  );
  const columns = headings.map((displayName, i) => ({
    id: `${sheetId}-t${index}-c${i}`,
    displayName,
    dataType: 'string',
    formula: '',
    meta: {},
    style: {},
  }));
  const name = definition.displayName ?? definition.name;
  const options = { showHeader: true, tableStyleId: 'chan-plain' };
  return [
    { id: `${sheetId}-t${index}`, name, range, options, filters: { tableColumnFilterList: [] }, columns, meta: {} },
  ];
};

const names = (workbook: Workbook, sheetIds: ReadonlyMap<string, string>) =>
  Object.fromEntries(
    (workbook.namedRanges ?? [])
      .filter(({ range }) => range && !range.includes('#REF!'))
      .map(({ name, range, scope }, i) => {
        const id = `name-${i}`;
        const localSheetId = (scope && sheetIds.get(scope)) || 'AllDefaultWorkbook';
        return [id, { id, name, formulaOrRefString: formulaFromFile(range).slice(1), localSheetId }];
      }),
  );

/** What the grid's plug-ins keep beside the cells: notes, conditional formats, tables and names. */
export const resourcesFromFile = (
  workbook: Workbook,
  sheetIds: ReadonlyMap<string, string>,
  color: ColorReader,
): IWorkbookData['resources'] => {
  const bySheet = (make: (sheet: Sheet, id: string) => unknown) =>
    Object.fromEntries(
      workbook.sheets.map((sheet) => [sheetIds.get(sheet.name), make(sheet, sheetIds.get(sheet.name) ?? '')]),
    );
  const tables = (sheet: Sheet, id: string) => ({
    tables: (sheet.tables ?? []).flatMap((definition, i) => table(definition, i, sheet, id)),
  });
  return Object.entries({
    SHEET_NOTE_PLUGIN: bySheet(notes),
    SHEET_CONDITIONAL_FORMATTING_PLUGIN: bySheet((sheet, id) => rulesFromFile(sheet, id, color)),
    SHEET_TABLE_PLUGIN: bySheet(tables),
    SHEET_DEFINED_NAME_PLUGIN: names(workbook, sheetIds),
  }).map(([name, data]) => ({ name, data: JSON.stringify(data) }));
};
