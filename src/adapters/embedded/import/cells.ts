import type { ICellData, IObjectMatrixPrimitiveType } from '@univerjs/core';
import { dateToSerial, parseRange, type Cell, type CellValue, type Sheet } from 'hucre';
import { formulaFromFile, relativeForm } from './formula-text';
import type { StyleTable } from './styles';

const TEXT = 1;
const NUMBER = 2;
const TRUTH = 3;

const valueFromFile = (value: CellValue | undefined): Pick<ICellData, 'v' | 't'> => {
  if (value === null || value === undefined) return {};
  if (typeof value === 'number') return { v: value, t: NUMBER };
  if (typeof value === 'boolean') return { v: value ? 1 : 0, t: TRUTH };
  if (value instanceof Date) return { v: dateToSerial(value), t: NUMBER };
  return { v: value, t: TEXT };
};

/** Cells that only hold what an array formula spilled when the file was saved. They would block the spill. */
const spilledCells = (sheet: Sheet): Set<string> => {
  const spilled = new Set<string>();
  for (const [key, cell] of sheet.cells ?? []) {
    if (!cell.formulaRef || cell.formulaType === 'shared') continue;
    const { startRow, startCol, endRow, endCol } = parseRange(cell.formulaRef);
    for (let row = startRow; row <= endRow; row++)
      for (let column = startCol; column <= endCol; column++)
        if (`${row},${column}` !== key) spilled.add(`${row},${column}`);
  }
  return spilled;
};

/** Formulas that differ only by their place share one text: the engine then parses it once. */
class SharedFormulas {
  private readonly owners = new Map<string, string>();
  private readonly fromFile = new Map<number, string>();
  constructor(private readonly sheetId: string) {}

  cell(cell: Cell, row: number, column: number): Pick<ICellData, 'f' | 'si'> {
    const fileId = cell.formulaType === 'shared' ? cell.formulaSharedIndex : undefined;
    if (!cell.formula) return fileId === undefined ? {} : { si: this.fromFile.get(fileId) };
    const f = formulaFromFile(cell.formula);
    const form = cell.formulaType === 'array' ? undefined : relativeForm(f, row, column);
    const owner = form === undefined ? undefined : this.owners.get(form);
    const si = owner ?? `${this.sheetId}-${row}-${column}`;
    if (form !== undefined) this.owners.set(form, si);
    if (fileId !== undefined) this.fromFile.set(fileId, si);
    if (owner) return { si };
    return form === undefined && fileId === undefined ? { f } : { f, si };
  }
}

/** The cells of a sheet as the grid keeps them. */
export const cellsFromFile = (
  sheet: Sheet,
  sheetId: string,
  styles: StyleTable,
): IObjectMatrixPrimitiveType<ICellData> => {
  const spilled = spilledCells(sheet);
  const shared = new SharedFormulas(sheetId);
  const matrix: Record<number, Record<number, ICellData>> = {};
  const put = (row: number, column: number, data: ICellData) => {
    if (Object.keys(data).length > 0) (matrix[row] ??= {})[column] = data;
  };
  sheet.rows.forEach((values, row) =>
    values.forEach((value, column) => {
      const key = `${row},${column}`;
      const cell = sheet.cells?.get(key);
      const s = styles.idOf(cell?.style);
      const content = spilled.has(key) ? {} : valueFromFile(cell?.value ?? value);
      const formula = cell?.formula !== undefined ? shared.cell(cell, row, column) : {};
      put(row, column, { ...content, ...formula, ...(s && { s }) });
    }),
  );
  return matrix;
};
