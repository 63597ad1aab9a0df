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
  /** False when it is enough to know which cells have a formula: each then reads as '='. */
  readonly formulaTexts: boolean;
  isDate(style: number): boolean;
  isCrossedOut(style: number): boolean;
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
  if (cell.type === 's') return cell.hasValue ? (context.strings[cell.number] ?? null) : null;
  const { value } = cell;
  if (value === undefined) return null;
  switch (cell.type) {
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

/** Cells as they come along, without an object for each. */
class CellStore {
  private readonly runs: { readonly row: number; readonly from: number }[] = [];
  private columns = new Uint16Array(1024);
  private readonly values: Cell[] = [];
  /** By place in `values`. */
  private readonly formulas = new Map<number, string>();

  add(row: number, column: number, value: Cell, formula: string): void {
    const at = this.values.length;
    if (this.runs.at(-1)?.row !== row) this.runs.push({ row, from: at });
    if (at === this.columns.length) {
      const larger = new Uint16Array(2 * at);
      larger.set(this.columns);
      this.columns = larger;
    }
    this.columns[at] = column;
    this.values.push(value);
    if (formula !== '') this.formulas.set(at, formula);
  }

  /** Rows without any content share one empty row, so that a cell far out costs no memory. */
  dense(sheet: string, limits: Limits): Pick<SheetContent, 'row' | 'column' | 'values' | 'formulas'> {
    const { runs } = this;
    const count = this.values.length;
    if (count === 0) return { row: 0, column: 0, values: [], formulas: [] };
    let top = Infinity;
    let bottom = 0;
    for (const { row } of runs) {
      top = Math.min(top, row);
      bottom = Math.max(bottom, row);
    }
    let left = Infinity;
    let right = 0;
    for (let n = 0; n < count; n++) {
      const column = this.columns[n]!;
      if (column < left) left = column;
      if (column > right) right = column;
    }
    const width = right - left + 1;
    if (runs.length * width > limits.cells)
      refuse('too-large', `Sheet ${sheet} has more cells than can be read at once.`);
    const blankValues: readonly Cell[] = new Array<Cell>(width).fill(null);
    const blankFormulas: readonly string[] = new Array<string>(width).fill('');
    const values = new Array<Cell[]>(bottom - top + 1).fill(blankValues as Cell[]);
    const formulas = new Array<string[]>(bottom - top + 1).fill(blankFormulas as string[]);
    runs.forEach(({ row, from }, n) => {
      const at = row - top;
      const to = runs[n + 1]?.from ?? count;
      if (values[at] === blankValues) values[at] = blankValues.slice();
      for (let k = from; k < to; k++) {
        const column = this.columns[k]! - left;
        values[at]![column] = this.values[k]!;
        const formula = this.formulas.size > 0 ? this.formulas.get(k) : undefined;
        if (formula === undefined) continue;
        if (formulas[at] === blankFormulas) formulas[at] = blankFormulas.slice();
        formulas[at]![column] = formula;
      }
    });
    return { row: top, column: left, values, formulas };
  }
}

export function readSheet(
  bytes: Uint8Array,
  part: string,
  sheet: string,
  tables: SheetContent['tables'],
  context: ReadContext,
): FileSheetContent {
  const store = new CellStore();
  const dates = new Map<string, string>();
  const crossedOut = new Map<number, number[]>();
  const hiddenRows: number[] = [];
  const hiddenColumns: number[] = [];
  const merged: RangeAddress[] = [];
  const shared = new SharedFormulas();
  const formulaOf = (cell: CellRecord): string => {
    if (!context.formulaTexts) return '=';
    const text = context.names.read(shared.expand(cell.formula!, cell.row, cell.column));
    return text === '' ? '' : `=${text}`;
  };
  walkSheet(bytes, part, {
    row(row, scanner) {
      if (onOff(scanner.attributes.get('hidden'))) hiddenRows.push(row.row);
    },
    cell(cell) {
      const formula = cell.formula ? formulaOf(cell) : '';
      const value = cellValue(cell, context);
      if (value === null && formula === '') return;
      if (typeof value === 'number' && context.isDate(cell.style)) {
        const iso = serialToIso(value, context.from1904);
        if (iso !== undefined) dates.set(cellAddress(cell.row, cell.column), iso);
      }
      if (context.isCrossedOut(cell.style)) {
        const columns = crossedOut.get(cell.row);
        if (columns) columns.push(cell.column);
        else crossedOut.set(cell.row, [cell.column]);
      }
      store.add(cell.row, cell.column, value, formula);
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
  return { sheet, ...store.dense(sheet, context.limits), tables, merged, hiddenRows, hiddenColumns, dates, crossedOut };
}

function* span(column: ReadonlyMap<string, string>): Generator<number> {
  const last = Math.min(Number(column.get('max')), 16_384);
  for (let n = Math.max(1, Number(column.get('min'))); n <= last; n++) yield n - 1;
}
