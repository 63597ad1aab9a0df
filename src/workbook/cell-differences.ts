import { isCellError, type Block, type Cell } from '../functions/define';
import type { RangeAddress, SheetContent } from './port';

/** What a file keeps of a cell: a constant, nothing, or a formula with the value it had. */
export type SavedCell = number | string | boolean | null | { readonly formula: string; readonly value: Cell | Block };

export interface CellDifference {
  readonly row: number;
  readonly column: number;
  readonly cell: SavedCell;
  /** Edited by the user, worked out anew after an edit, or ours. */
  readonly kind: 'edited' | 'renewed' | 'own';
}

export interface SheetComparison {
  /** The sheet as the file holds it. */
  readonly file: SheetContent;
  /** The sheet as it is shown now. */
  readonly grid: SheetContent;
  /** Values as they were shown right after opening: programs differ in the last digits of what they calculate. */
  readonly opened: Pick<SheetContent, 'row' | 'column' | 'values'>;
  /** True for cells whose content anybody has written since the file was opened. Others stay as the file has them. */
  wasWritten(row: number, column: number): boolean;
  /** Our columns; they follow the grid in any case. */
  readonly own?: RangeAddress;
  /** Blocks that formulas fill beyond their own cell, as shown now. */
  readonly spills: readonly RangeAddress[];
}

const QUOTED = /"(?:[^"]|"")*"|'(?:[^']|'')*'|[^"']+/g;

/** The same for every spelling of one formula: stored or shown names, any case outside quotes. */
const spelling = (formula: string): string =>
  formula.replace(QUOTED, (piece) =>
    piece.startsWith('"') || piece.startsWith("'")
      ? piece
      : piece
          .toUpperCase()
          .replace(/_XL(?:FN|WS|PM)\./g, '')
          .replace(/(?:_XLDUDF_)?(CHAN[._][A-Z0-9._]+)(?=\s*\()/g, (_, name: string) => name.replaceAll('_', '.')),
  );

export const isSameFormula = (a: string, b: string): boolean => a === b || spelling(a) === spelling(b);

const plain = (cell: Cell | undefined): Cell => {
  if (cell === undefined || cell === '') return null;
  return typeof cell === 'string' ? cell.replace(/\r\n?/g, '\n') : cell;
};

/** Equal as cells: nothing and an empty text look alike, line ends differ between programs, 1 is not "1". */
export const isSameValue = (a: Cell | undefined, b: Cell | undefined): boolean => {
  const [one, other] = [plain(a), plain(b)];
  return isCellError(one) && isCellError(other) ? one.error === other.error : one === other;
};

const holds = (range: RangeAddress, row: number, column: number): boolean =>
  row >= range.row && row < range.row + range.rows && column >= range.column && column < range.column + range.columns;

type Values = Pick<SheetContent, 'row' | 'column' | 'values'>;
const valueAt = ({ row, column, values }: Values, r: number, c: number): Cell => values[r - row]?.[c - column] ?? null;
const formulaAt = ({ row, column, formulas }: SheetContent, r: number, c: number): string =>
  formulas[r - row]?.[c - column] ?? '';

/** A formula that shows nothing has an empty text as its value. */
const formulaCell = (formula: string, value: Cell | Block): SavedCell => ({ formula, value: value ?? '' });

/** What to write so that a file shows what the grid shows. Texts that look like formulas stay texts. */
const savedCell = (grid: SheetContent, row: number, column: number, spill: RangeAddress | undefined): SavedCell => {
  const formula = formulaAt(grid, row, column);
  const value = plain(valueAt(grid, row, column));
  if (formula !== '' && spill)
    return formulaCell(
      formula,
      Array.from({ length: spill.rows }, (_, r) =>
        Array.from({ length: spill.columns }, (__, c) => valueAt(grid, row + r, column + c)),
      ),
    );
  if (formula !== '') return formulaCell(formula, value);
  if (isCellError(value)) return { formula: `=${value.error}`, value };
  if (typeof value === 'string' && value.startsWith('=') && value.length > 1)
    return { formula: `="${value.replaceAll('"', '""')}"`, value };
  return value;
};

/** The smallest block that holds all of both sheets. */
const extent = (contents: readonly Values[]) => {
  const filled = contents.filter(({ values }) => values.length > 0);
  const columnsOf = ({ values }: Values) => values.reduce((most, line) => Math.max(most, line.length), 0);
  return {
    top: Math.min(...filled.map(({ row }) => row)),
    bottom: Math.max(...filled.map(({ row, values }) => row + values.length)),
    left: Math.min(...filled.map(({ column }) => column)),
    right: Math.max(...filled.map((content) => content.column + columnsOf(content))),
  };
};

/** Cells that must be written into the file so that it says what the grid says; all others stay as they are. */
export const cellDifferences = (comparison: SheetComparison): readonly CellDifference[] => {
  const { file, grid, own, spills } = comparison;
  const found: CellDifference[] = [];
  const { top, bottom, left, right } = extent([file, grid]);
  for (let row = top; row < bottom; row++)
    for (let column = left; column < right; column++) {
      const isOurs = own !== undefined && holds(own, row, column);
      const spill = spills.find((range) => holds(range, row, column));
      if (spill && (spill.row !== row || spill.column !== column)) continue;
      const kind = kindOf(comparison, row, column, isOurs, spill !== undefined);
      if (kind) found.push({ row, column, kind, cell: savedCell(grid, row, column, spill) });
    }
  return found;
};

const kindOf = (
  { file, grid, opened, wasWritten }: SheetComparison,
  row: number,
  column: number,
  isOurs: boolean,
  fillsBlock: boolean,
): CellDifference['kind'] | undefined => {
  const now = valueAt(grid, row, column);
  const isSame = isSameValue(valueAt(file, row, column), now);
  const formula = formulaAt(grid, row, column);
  const isSameText = isSameFormula(formulaAt(file, row, column), formula);
  if (isSame && isSameText) return undefined;
  if (isOurs) return 'own';
  if (wasWritten(row, column) && (!isSameText || formula === '')) return 'edited';
  // A value that cannot be worked out here must not replace one that another program could.
  if (!isSameText || formula === '' || fillsBlock || isCellError(now)) return undefined;
  return isSameValue(valueAt(opened, row, column), now) ? undefined : 'renewed';
};
