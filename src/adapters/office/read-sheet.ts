import type { Cell } from '../../functions/define';
import { HostProblem, type RangeAddress, type SheetContent, type SheetInfo } from '../../workbook/port';
import { rowsPerRequest } from './batch';
import { SETS, type OfficeHost } from './host';
import { hostCodeOf } from './problems';

const PLACE = 'rowIndex,columnIndex,rowCount,columnCount';

export const placeOf = (range: Excel.Range): RangeAddress => ({
  row: range.rowIndex,
  column: range.columnIndex,
  rows: range.rowCount,
  columns: range.columnCount,
});

export const missingSheet = (name: string): HostProblem =>
  new HostProblem(`There is no sheet “${name}” in this workbook.`, 'not-found');

export const readSheetList = async (context: Excel.RequestContext): Promise<SheetInfo[]> => {
  const sheets = context.workbook.worksheets;
  const active = sheets.getActiveWorksheet();
  sheets.load('items/name,items/visibility');
  active.load('name');
  await context.sync();
  return sheets.items.map(({ name, visibility }) => ({
    name,
    active: name === active.name,
    visible: visibility === 'Visible',
  }));
};

interface Content {
  readonly values: Cell[][];
  readonly formulas: string[][];
  readonly hiddenRows: number[];
}

const cellOf = (value: unknown, type: string | undefined): Cell => {
  if (type === 'Error') return { error: String(value) };
  if (type === 'Empty' || value === null || value === undefined) return null;
  return value as Cell;
};
/** A constant text may start with an equals sign too; its value then is the same text. */
const formulaOf = (formula: unknown, value: unknown): string =>
  typeof formula === 'string' && formula.startsWith('=') && formula !== value ? formula : '';

const keep = (content: Content, range: Excel.Range): void => {
  range.values.forEach((row: unknown[], i) => {
    const types = range.valueTypes[i] ?? [];
    const formulas: unknown[] = range.formulas[i] ?? [];
    content.values.push(row.map((value, k) => cellOf(value, types[k])));
    content.formulas.push(row.map((value, k) => formulaOf(formulas[k], value)));
  });
};

/** Reads in slices; a slice whose answer is too large for the host is halved. */
const readCells = async (
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  place: RangeAddress,
  hidden: boolean | null,
): Promise<Content> => {
  const content: Content = { values: [], formulas: [], hiddenRows: [] };
  let step = rowsPerRequest(place.columns);
  for (let done = 0; done < place.rows;) {
    const rows = Math.min(step, place.rows - done);
    const slice = sheet.getRangeByIndexes(place.row + done, place.column, rows, place.columns);
    slice.load('values,formulas,valueTypes');
    // null says that some rows are hidden and some are not.
    const rowStates = hidden === null ? slice.getRowProperties({ rowHidden: true }) : undefined;
    try {
      await context.sync();
    } catch (error) {
      if (hostCodeOf(error) !== 'ResponsePayloadSizeLimitExceeded' || step === 1) throw error;
      step = Math.ceil(step / 2);
      continue;
    }
    keep(content, slice);
    for (let i = 0; i < rows; i++)
      if (hidden ?? rowStates?.value[i]?.rowHidden) content.hiddenRows.push(place.row + done + i);
    done += rows;
  }
  return content;
};

const readMerged = async (context: Excel.RequestContext, used: Excel.Range): Promise<RangeAddress[]> => {
  const merged = used.getMergedAreasOrNullObject();
  merged.load('areaCount');
  await context.sync();
  if (merged.isNullObject) return [];
  merged.areas.load(`items/${PLACE.replaceAll(',', ',items/')}`);
  await context.sync();
  return merged.areas.items.map(placeOf);
};

export const readSheet = async (
  host: OfficeHost,
  context: Excel.RequestContext,
  name: string,
): Promise<SheetContent> => {
  const sheet = context.workbook.worksheets.getItemOrNullObject(name);
  sheet.load('name');
  await context.sync();
  if (sheet.isNullObject) throw missingSheet(name);

  // Values only: a column that somebody formatted down to the last row is not a million rows of plan.
  const used = sheet.getUsedRangeOrNullObject(true);
  used.load(`${PLACE},rowHidden`);
  sheet.tables.load('items/name');
  await context.sync();
  const tableRanges = sheet.tables.items.map((table) => ({ name: table.name, range: table.getRange() }));
  tableRanges.forEach(({ range }) => range.load(PLACE));
  if (tableRanges.length > 0) await context.sync();
  const tables = tableRanges.map(({ name, range }) => ({ name, range: placeOf(range) }));

  if (used.isNullObject)
    return { sheet: name, row: 0, column: 0, values: [], formulas: [], tables, merged: [], hiddenRows: [] };
  const place = placeOf(used);
  const merged = host.supports(SETS.mergedAreas) ? await readMerged(context, used) : [];
  const content = await readCells(context, sheet, place, used.rowHidden as boolean | null);
  return { sheet: name, row: place.row, column: place.column, ...content, tables, merged };
};
