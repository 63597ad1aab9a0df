import { isCellError, type Block, type Cell } from '../../functions/define';
import { cellAddress } from '../../workbook/address';
import type { Change, RangeAddress } from '../../workbook/port';
import type { WholeLook } from '../../workbook/whole-look';
import type { SheetFrame } from '../../workbook/whole-sheet';
import type { FormulaNames } from './formula-names';
import { CELL_TEXT, FORMULA_TEXT, LAST_COLUMN, LAST_ROW } from './limits';
import { refuse } from './refuse';
import { FormulaShape } from './formula-shape';
import type { CellInput, Effect, WriteEffect } from './sheet-effects';

/** A formula as people read it, with '=', and the value it has; a block of values when it fills more than its own cell. */
export interface FormulaCell {
  readonly formula: string;
  readonly value?: Cell | Block;
}
export type FileCell = number | string | boolean | null | FormulaCell;

/** Rows that are worked out one by one while the sheet is written, so that long lists need no room in memory. */
export interface FileRowsChange extends RangeAddress {
  readonly kind: 'rows';
  readonly sheet: string;
  /** Formulas as people read them, one per column, with `rowMark` in place of the number of the row; or values only. */
  readonly formulas?: { readonly texts: readonly string[]; readonly rowMark: string };
  /** Values of a row (0-based); undefined for a row that stays empty. Asked more than once. */
  valuesOf(row: number): readonly Cell[] | undefined;
}

type Of<Kind extends Change['kind']> = Extract<Change, { kind: Kind }>;
type CellsChange = Of<'cells'>;
export type FileChange =
  | Exclude<Change, CellsChange | Of<'sheet'> | Of<'look'> | Of<'note'>>
  | (Of<'sheet'> & { readonly frame?: SheetFrame })
  /** A note that a person wrote elsewhere stays that person's. */
  | (Of<'note'> & { readonly isOurs?: boolean })
  | (Omit<Of<'look'>, 'look'> & { readonly look: WholeLook })
  | (Omit<CellsChange, 'cells'> & { readonly cells: readonly (readonly FileCell[])[] })
  | FileRowsChange;
export type FileCellsChange = Extract<FileChange, { kind: 'cells' }>;

/** Only places that a sheet has can be changed. */
export function checkPlace(sheet: string, { row, column, rows, columns }: RangeAddress): void {
  const whole =
    [row, column, rows, columns].every(Number.isInteger) && row >= 0 && column >= 0 && rows > 0 && columns > 0;
  if (!whole || row + rows > LAST_ROW + 1 || column + columns > LAST_COLUMN + 1)
    refuse(
      'unsupported',
      `Sheet ${sheet} has no such cells (row ${row + 1}, column ${column + 1}, ${rows} by ${columns}).`,
    );
}

/** A block of cells as effects; formulas that fill several cells come with what they put into the others. */
export function cellEffects(change: FileCellsChange, names: FormulaNames): Effect[] {
  const { sheet, row, column, cells } = change;
  const columns = Math.max(0, ...cells.map((line) => line.length));
  if (columns === 0) return [];
  const range = { row, column, rows: cells.length, columns };
  checkPlace(sheet, range);
  const spills: Effect[] = [];
  const inputs = cells.map((line, r) =>
    line.map((cell, c) => {
      const at = { row: row + r, column: column + c };
      const input = inputOf(cell, () => `${cellAddress(at.row, at.column)} of sheet ${sheet}`, names);
      if (input?.kind === 'formula' && input.spill) {
        const spill = spillEffect(at, (cell as { value: Block }).value);
        checkPlace(sheet, spill.range);
        spills.push(spill);
      }
      return input;
    }),
  );
  return [blockEffect(range, inputs), ...spills];
}

/** About the size of a cell with a formula. */
const CELL_BYTES = 192;

const blockEffect = (
  range: RangeAddress,
  cells: readonly (readonly (CellInput | null | undefined)[])[],
  spills = false,
): WriteEffect => ({
  kind: 'write',
  range,
  inputAt: (row, column) => cells[row - range.row]?.[column - range.column],
  spills,
  bytes: range.rows * range.columns * CELL_BYTES,
});

/** Rows with the same formulas as one effect, which makes what a row holds when it is asked for it. */
export function rowsEffect(change: FileRowsChange, names: FormulaNames): Effect {
  const { sheet, row: firstRow, column: firstColumn, rows, columns, formulas } = change;
  const range = { row: firstRow, column: firstColumn, rows, columns };
  checkPlace(sheet, range);
  const lastRow = firstRow + rows - 1;
  const shapes = formulas?.texts.map((text, c) => {
    const shape = new FormulaShape(names.write(text.replace(/^=/, '')).split(formulas.rowMark));
    if (shape.text(lastRow).length > FORMULA_TEXT)
      refuse(
        'too-large',
        `The formula for cell ${cellAddress(lastRow, firstColumn + c)} of sheet ${sheet} has more than ${FORMULA_TEXT} characters.`,
      );
    return shape;
  });
  const rowOf = (row: number): readonly (CellInput | null)[] | undefined =>
    change.valuesOf(row)?.map((value, c): CellInput | null => {
      const shape = shapes?.[c];
      if (shape) return { kind: 'formula', formula: shape, value };
      if (value === null || isCellError(value)) return null;
      const where = (): string => `${cellAddress(row, firstColumn + c)} of sheet ${sheet}`;
      return inputOf(value, where, names);
    });
  let known = -1;
  let inputs: readonly (CellInput | null)[] | undefined;
  return {
    kind: 'write',
    range,
    inputAt(row, column) {
      if (row !== known) inputs = rowOf((known = row));
      return inputs?.[column - firstColumn] ?? null;
    },
    spills: false,
    bytes: rows * (shapes ? shapes.reduce((sum, { bytes }) => sum + bytes + 64, 0) : columns * CELL_BYTES),
  };
}

function inputOf(cell: FileCell, where: () => string, names: FormulaNames): CellInput | null {
  if (cell === null) return null;
  const isText = typeof cell === 'string';
  if (typeof cell === 'object' || (isText && cell.startsWith('=') && cell.length > 1)) {
    const given: FormulaCell = typeof cell === 'object' ? cell : { formula: cell as string };
    const formula = names.write(given.formula.replace(/^=/, ''));
    if (formula.length > FORMULA_TEXT)
      refuse('too-large', `The formula for cell ${where()} has more than ${FORMULA_TEXT} characters.`);
    if (!isBlock(given.value)) return { kind: 'formula', formula, value: given.value };
    const rows = given.value.length;
    const columns = given.value[0]?.length ?? 0;
    const value = given.value[0]?.[0] ?? null;
    return rows * columns > 1
      ? { kind: 'formula', formula, value, spill: { rows, columns } }
      : { kind: 'formula', formula, value };
  }
  if (isText && cell.length > CELL_TEXT)
    refuse('too-large', `The text for cell ${where()} has more than ${CELL_TEXT} characters.`);
  return { kind: 'constant', value: cell };
}

const isBlock = (value: Cell | Block | undefined): value is Block => Array.isArray(value);

function spillEffect(at: { row: number; column: number }, values: Block): Effect {
  const cells = values.map((line, r) =>
    line.map((value, c): CellInput | undefined => (r === 0 && c === 0 ? undefined : { kind: 'spilled', value })),
  );
  return blockEffect({ ...at, rows: cells.length, columns: cells[0]!.length }, cells, true);
}
