import type { Cell } from '../../functions/define';
import type { RangeAddress, SheetContent } from '../../workbook/port';
import { cellAddress } from '../../workbook/address';
import { parseRange } from './cell-reference';
import { isoToSerial, serialToIso } from './date-cells';
import { shiftFormula } from './formula-text';
import type { FormulaNames } from './formula-names';
import type { Limits } from './limits';
import { refuse } from './refuse';
import { walkSheet, type CellRecord, type StoredFormula } from './sheet-walk';
import { readCellText } from './xml-text';
import { childrenOf, onOff, parseTree } from './xml-tree';

/** What a reader of cells must know about the workbook around the sheet. */
export interface ReadContext {
  readonly strings: readonly string[];
  readonly names: FormulaNames;
  readonly from1904: boolean;
  readonly limits: Limits;
  isDate(style: number): boolean;
}

export interface FileSheetContent extends SheetContent {
  readonly hiddenColumns: readonly number[];
  /** ISO text of the cells that hold a date or time, by cell name. */
  readonly dates: ReadonlyMap<string, string>;
}

export function cellValue(cell: CellRecord, context: Pick<ReadContext, 'strings' | 'from1904'>): Cell {
  if (cell.type === 'n') {
    const { number } = cell;
    if (!Number.isNaN(number) && (number !== 0 || cell.value?.trim() !== '')) return cell.hasValue ? number : null;
  }
  const { value } = cell;
  if (value === undefined) return null;
  switch (cell.type) {
    case 's':
      return context.strings[Number(value)] ?? null;
    case 'b':
      return value.trim() === '1' || value.trim() === 'true';
    case 'e':
      return { error: value };
    case 'str':
    case 'inlineStr':
      return readCellText(value);
    case 'd':
      return isoToSerial(value.trim(), context.from1904) ?? value;
    case 'n':
      return value.trim() === '' ? null : value;
  }
}

/** Formulas with the shared ones written out, as they come along in document order. */
export class SharedFormulas {
  private readonly masters = new Map<string, { text: string; row: number; column: number }>();

  expand(formula: StoredFormula, row: number, column: number): string {
    if (formula.type !== 'shared' || formula.shared === undefined) return formula.text;
    if (formula.text !== '') {
      this.masters.set(formula.shared, { text: formula.text, row, column });
      return formula.text;
    }
    const master = this.masters.get(formula.shared);
    return master ? shiftFormula(master.text, row - master.row, column - master.column) : '';
  }
}

interface SparseRow {
  readonly columns: number[];
  readonly values: Cell[];
  readonly formulas: string[];
}

export function readSheet(
  bytes: Uint8Array,
  part: string,
  sheet: string,
  tables: SheetContent['tables'],
  context: ReadContext,
): FileSheetContent {
  const rows = new Map<number, SparseRow>();
  const dates = new Map<string, string>();
  const hiddenRows: number[] = [];
  const hiddenColumns: number[] = [];
  const merged: RangeAddress[] = [];
  const shared = new SharedFormulas();
  walkSheet(bytes, part, {
    row(row, scanner) {
      if (onOff(scanner.attributes.get('hidden'))) hiddenRows.push(row.row);
    },
    cell(cell) {
      const formula = cell.formula ? context.names.read(shared.expand(cell.formula, cell.row, cell.column)) : '';
      const value = cellValue(cell, context);
      if (value === null && formula === '') return;
      if (typeof value === 'number' && context.isDate(cell.style)) {
        const iso = serialToIso(value, context.from1904);
        if (iso !== undefined) dates.set(cellAddress(cell.row, cell.column), iso);
      }
      let row = rows.get(cell.row);
      if (!row) rows.set(cell.row, (row = { columns: [], values: [], formulas: [] }));
      row.columns.push(cell.column);
      row.values.push(value);
      row.formulas.push(formula === '' ? '' : `=${formula}`);
    },
    section(local, start, end) {
      if (local === 'mergeCells')
        for (const merge of childrenOf(parseTree(bytes, part, start, end), 'mergeCell')) {
          const range = parseRange(merge.attributes.get('ref') ?? '');
          if (range) merged.push(range);
        }
      if (local === 'cols')
        for (const column of childrenOf(parseTree(bytes, part, start, end), 'col'))
          if (onOff(column.attributes.get('hidden'))) hiddenColumns.push(...span(column.attributes));
    },
  });
  return { sheet, ...dense(rows, sheet, context.limits), tables, merged, hiddenRows, hiddenColumns, dates };
}

function* span(column: ReadonlyMap<string, string>): Generator<number> {
  const last = Math.min(Number(column.get('max')), 16_384);
  for (let n = Math.max(1, Number(column.get('min'))); n <= last; n++) yield n - 1;
}

/** Rows without any content share one empty row, so that a cell far out costs no memory. */
function dense(
  rows: ReadonlyMap<number, SparseRow>,
  sheet: string,
  limits: Limits,
): Pick<SheetContent, 'row' | 'column' | 'values' | 'formulas'> {
  if (rows.size === 0) return { row: 0, column: 0, values: [], formulas: [] };
  let top = Infinity;
  let bottom = 0;
  let left = Infinity;
  let right = 0;
  for (const [row, { columns }] of rows) {
    top = Math.min(top, row);
    bottom = Math.max(bottom, row);
    for (const column of columns) {
      if (column < left) left = column;
      if (column > right) right = column;
    }
  }
  const width = right - left + 1;
  if (rows.size * width > limits.cells) refuse('too-large', `Sheet ${sheet} has more cells than can be read at once.`);
  const blankValues: readonly Cell[] = new Array<Cell>(width).fill(null);
  const blankFormulas: readonly string[] = new Array<string>(width).fill('');
  const values: (readonly Cell[])[] = new Array<readonly Cell[]>(bottom - top + 1).fill(blankValues);
  const formulas: (readonly string[])[] = new Array<readonly string[]>(bottom - top + 1).fill(blankFormulas);
  for (const [row, sparse] of rows) {
    const rowValues = blankValues.slice();
    const rowFormulas = sparse.formulas.some((formula) => formula !== '') ? blankFormulas.slice() : undefined;
    sparse.columns.forEach((column, n) => {
      rowValues[column - left] = sparse.values[n]!;
      if (rowFormulas) rowFormulas[column - left] = sparse.formulas[n]!;
    });
    values[row - top] = rowValues;
    if (rowFormulas) formulas[row - top] = rowFormulas;
  }
  return { row: top, column: left, values, formulas };
}
