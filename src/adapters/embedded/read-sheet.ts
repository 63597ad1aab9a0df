import { ObjectMatrix, type ICellData, type Nullable, type Worksheet } from '@univerjs/core';
import { FormulaDataModel } from '@univerjs/engine-formula';
import { TableManager } from '@univerjs/sheets-table';
import type { Cell } from '../../functions/define';
import { dateText } from '../../plan/json-date';
import { cellAddress } from '../../workbook/address';
import { showsDate } from '../../workbook/date-format';
import { HostProblem, type RangeAddress, type SheetContent } from '../../workbook/port';
import { Breath } from './breath';
import { cellFromGrid } from './cell-values';
import type { Services } from './host';

/** A stray cell in a far corner would ask for more memory than a page has. */
const MOST_CELLS = 5_000_000;

interface Bounds {
  startRow: number;
  startColumn: number;
  endRow: number;
  endColumn: number;
}
export const addressOf = ({ startRow, startColumn, endRow, endColumn }: Bounds): RangeAddress => ({
  row: startRow,
  column: startColumn,
  rows: endRow - startRow + 1,
  columns: endColumn - startColumn + 1,
});

const hasFormula = (cell: Nullable<ICellData>): boolean => Boolean(cell?.f || cell?.si);
/** The day of a number that is shown as a date. */
const dateIn = (cell: ICellData, pattern: string | undefined): string | undefined => {
  const value = pattern && showsDate(pattern) ? cellFromGrid(cell) : null;
  return typeof value === 'number' && value > 0 ? dateText(value) : undefined;
};
const isContent = (cell: Nullable<ICellData>): boolean => hasFormula(cell) || cellFromGrid(cell) !== null;

const usedBounds = (matrices: readonly ObjectMatrix<Nullable<ICellData>>[]): Bounds | undefined => {
  let bounds: Bounds | undefined;
  for (const matrix of matrices)
    matrix.forValue((row, column, cell) => {
      if (!isContent(cell)) return;
      bounds ??= { startRow: row, startColumn: column, endRow: row, endColumn: column };
      bounds.startRow = Math.min(bounds.startRow, row);
      bounds.startColumn = Math.min(bounds.startColumn, column);
      bounds.endRow = Math.max(bounds.endRow, row);
      bounds.endColumn = Math.max(bounds.endColumn, column);
    });
  return bounds;
};

const hiddenRows = (sheet: Worksheet, from: number, to: number): number[] => {
  const hidden: number[] = [];
  for (let row = from; row <= to; row++) if (!sheet.getRowVisible(row)) hidden.push(row);
  return hidden;
};

/** The used range of a sheet, with what formulas have spilled, in turns that leave the page usable. */
export const readSheet = async (services: Services, name: string): Promise<SheetContent> => {
  const sheet = services.sheet(name);
  const unitId = services.workbook().getUnitId();
  const sheetId = sheet.getSheetId();
  const formulaModel = services.injector.get(FormulaDataModel);
  const stored = sheet.getCellMatrix() as ObjectMatrix<Nullable<ICellData>>;
  const spilled = new ObjectMatrix<Nullable<ICellData>>(
    (formulaModel.getArrayFormulaCellData()[unitId]?.[sheetId] ?? {}) as never,
  );
  const bounds = usedBounds([stored, spilled]);
  const tables = services.injector
    .get(TableManager)
    .getTablesBySubunitId(unitId, sheetId)
    .map((table) => ({ name: table.getDisplayName(), range: addressOf(table.getRange()) }));
  const merged = sheet.getMergeData().map(addressOf);
  if (!bounds) return { sheet: name, row: 0, column: 0, values: [], formulas: [], tables, merged, hiddenRows: [] };

  const { row, column, rows, columns } = addressOf(bounds);
  if (rows * columns > MOST_CELLS)
    throw new HostProblem(
      `The sheet "${name}" uses ${rows} rows by ${columns} columns. Remove stray cells far from the data.`,
      'too-large',
    );
  const breath = new Breath();
  const styles = services.workbook().getStyles();
  const crossedOut = new Map<number, number[]>();
  const dates = new Map<string, string>();
  const values: Cell[][] = [];
  for (let r = bounds.startRow; r <= bounds.endRow; r++) {
    const rowValues: Cell[] = [];
    for (let c = bounds.startColumn; c <= bounds.endColumn; c++) {
      const cell = stored.getValue(r, c);
      if (cell?.s && cellFromGrid(cell) !== null && styles.getStyleByCell(cell)?.st?.s === 1)
        crossedOut.set(r, [...(crossedOut.get(r) ?? []), c]);
      const date = cell?.s ? dateIn(cell, styles.getStyleByCell(cell)?.n?.pattern) : undefined;
      if (date !== undefined) dates.set(cellAddress(r, c), date);
      rowValues.push(cellFromGrid(stored.getValue(r, c)) ?? cellFromGrid(spilled.getValue(r, c)));
    }
    values.push(rowValues);
    if (breath.due()) await breath.take();
  }
  const textOf = (r: number, c: number): string =>
    hasFormula(stored.getValue(r, c)) ? (formulaModel.getFormulaStringByCell(r, c, sheetId, unitId) ?? '') : '';
  let formulas: string[][] | undefined;
  return {
    sheet: name,
    row,
    column,
    values,
    // Writing a shared formula out for each of its cells costs more than all the rest, and few readers ask for it.
    get formulas() {
      return (formulas ??= values.map((cells, r) => cells.map((_, c) => textOf(row + r, column + c))));
    },
    tables,
    merged,
    crossedOut,
    dates,
    hiddenRows: hiddenRows(sheet, bounds.startRow, bounds.endRow),
  };
};
