import {
  BorderStyleTypes,
  type ICellData,
  type IMutationInfo,
  type IObjectMatrixPrimitiveType,
  type IStyleData,
  type Nullable,
  type Worksheet,
} from '@univerjs/core';
import { SetRangeValuesMutation, SetStyleCommand } from '@univerjs/sheets';
import type { Change, CellLook, RangeAddress } from '../../workbook/port';
import type { Action } from './action';
import { cellToGrid } from './cell-values';
import { relativeForm } from './import/formula-text';

type Matrix = IObjectMatrixPrimitiveType<Nullable<ICellData>>;
/** Cells that go to the grid in one turn. */
export const CELLS_PER_TURN = 2000;

/** Without a trigger of its own a mutation of looks alone would be taken for the end of the cells' formulas. */
const setCells = (action: Action, sheet: Worksheet, cellValue: Matrix, trigger?: string): IMutationInfo => ({
  id: SetRangeValuesMutation.id,
  params: { unitId: action.unitId, subUnitId: sheet.getSheetId(), cellValue, trigger },
});

/** Two steps back: empty the cells, then put each one's former content and look; a merge would keep new parts. */
const wayBack = (action: Action, sheet: Worksheet, cellValue: Matrix): IMutationInfo[] => {
  const styles = action.services.workbook().getStyles();
  const empty: Record<number, Record<number, null>> = {};
  const former: Record<number, Record<number, ICellData>> = {};
  for (const [row, cells] of Object.entries(cellValue))
    for (const column of Object.keys(cells as object)) {
      const [r, c] = [Number(row), Number(column)];
      (empty[r] ??= {})[c] = null;
      const cell = sheet.getCellRaw(r, c);
      if (cell) (former[r] ??= {})[c] = { ...cell, ...(cell.s && { s: styles.getStyleByCell(cell) }) };
    }
  const back = [setCells(action, sheet, empty)];
  if (Object.keys(former).length > 0) back.push(setCells(action, sheet, former));
  return back;
};

const runCells = (action: Action, sheet: Worksheet, cellValue: Matrix): void =>
  action.run(setCells(action, sheet, cellValue), wayBack(action, sheet, cellValue));

/** Splits a block of rows so that one turn stays short. */
export function* turnsOf(range: RangeAddress): Generator<RangeAddress> {
  const rowsPerTurn = Math.max(1, Math.floor(CELLS_PER_TURN / Math.max(1, range.columns)));
  for (let done = 0; done < range.rows; done += rowsPerTurn)
    yield { ...range, row: range.row + done, rows: Math.min(rowsPerTurn, range.rows - done) };
}

let written = 0;

/** Formulas of a block that differ only by their place share one text, as the engine then parses it once. */
export class CellWriter {
  private readonly owners = new Map<string, string>();
  private readonly block = ++written;

  constructor(
    private readonly action: Action,
    private readonly sheet: Worksheet,
    private readonly change: Extract<Change, { kind: 'cells' }>,
  ) {}

  private cell(value: number | string | boolean | null, row: number, column: number): ICellData {
    const plain = cellToGrid(value);
    if (typeof value !== 'string' || !value.startsWith('=')) return plain;
    const form = relativeForm(value, row, column);
    if (form === undefined) return plain;
    const owner = this.owners.get(form);
    if (owner) return { ...plain, f: null, si: owner };
    const si = `chan-${this.block}-${row}-${column}`;
    this.owners.set(form, si);
    return { ...plain, si };
  }

  write({ row, rows }: RangeAddress): void {
    const matrix: Record<number, Record<number, ICellData>> = {};
    for (let r = row; r < row + rows; r++)
      this.change.cells[r - this.change.row]?.forEach((value, i) => {
        (matrix[r] ??= {})[this.change.column + i] = this.cell(value, r, this.change.column + i);
      });
    runCells(this.action, this.sheet, matrix);
  }
}

const everyCell = (range: RangeAddress, cell: Nullable<ICellData>): Matrix => {
  const matrix: Record<number, Record<number, Nullable<ICellData>>> = {};
  for (let row = range.row; row < range.row + range.rows; row++) {
    const cells: Record<number, Nullable<ICellData>> = (matrix[row] = {});
    for (let column = range.column; column < range.column + range.columns; column++)
      cells[column] = cell && structuredClone(cell);
  }
  return matrix;
};

export const clearCells = (action: Action, sheet: Worksheet, range: RangeAddress): void =>
  runCells(action, sheet, everyCell(range, null));

const ALIGN = { left: 1, center: 2, right: 3 } as const;
const VERTICAL = { top: 1, center: 2, bottom: 3 } as const;
const WRAP = 3;
const CLIP = 2;

const styleOf = (look: CellLook): IStyleData => ({
  ...(look.bold !== undefined && { bl: look.bold ? 1 : 0 }),
  ...(look.ink !== undefined && { cl: { rgb: look.ink } }),
  ...(look.ground !== undefined && { bg: { rgb: look.ground } }),
  ...(look.numberFormat !== undefined && { n: { pattern: look.numberFormat } }),
  ...(look.align !== undefined && { ht: ALIGN[look.align] }),
  ...(look.vertical !== undefined && { vt: VERTICAL[look.vertical] }),
  ...(look.hairline !== undefined && { bd: { b: { s: BorderStyleTypes.HAIR, cl: { rgb: look.hairline } } } }),
  ...(look.wrap !== undefined && { tb: look.wrap ? WRAP : CLIP }),
});

export const setLook = (action: Action, sheet: Worksheet, range: RangeAddress, look: CellLook): void => {
  const styles = action.services.workbook().getStyles();
  const looks = (cellValue: Matrix) => setCells(action, sheet, cellValue, SetStyleCommand.id);
  const former: Record<number, Record<number, ICellData>> = {};
  for (let row = range.row; row < range.row + range.rows; row++)
    for (let column = range.column; column < range.column + range.columns; column++) {
      const s = styles.getStyleByCell(sheet.getCellRaw(row, column));
      if (s) (former[row] ??= {})[column] = { s };
    }
  action.run(looks(everyCell(range, { s: styleOf(look) })), [looks(everyCell(range, { s: null })), looks(former)]);
};
