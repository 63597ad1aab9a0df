import type { Cell } from '../../functions/define';
import type { SheetContent } from '../port';
import { SheetCells } from '../sheet-cells';
import { BEGINS, ENDS } from './words';

export type Typed = string | number | boolean | null;
export type Row = readonly [topic: Typed, text: Typed];

export interface BlockLine {
  readonly topic: Cell;
  readonly text: Cell;
  /** Something in the row that cannot be carried to another one: a formula, a number or date, a cell beside. */
  readonly isFixed: boolean;
}
/** The marked block on a sheet, with what stands between its first and its last line. */
export interface Block {
  readonly row: number;
  readonly column: number;
  /** The row after the last line. */
  readonly end: number;
  readonly filling: number;
  readonly lines: readonly BlockLine[];
}

export const textIn = (cell: Cell): string =>
  cell === null ? '' : (typeof cell === 'object' ? cell.error : String(cell)).replaceAll('\r\n', '\n').trim();

const lineAt = (cells: SheetCells, row: number, column: number): BlockLine => {
  const { content } = cells;
  const isBeside = (content.values[row - content.row] ?? []).some(
    (cell, i) => cell !== null && cell !== '' && content.column + i !== column && content.column + i !== column + 1,
  );
  const isFormula = [column, column + 1].some(
    (c) => (content.formulas[row - content.row]?.[c - content.column] ?? '') !== '',
  );
  const [topic, text] = [cells.at(row, column), cells.at(row, column + 1)];
  const isText = [topic, text].every((cell) => cell === null || typeof cell === 'string');
  return { topic, text, isFixed: isBeside || isFormula || !isText };
};

/** Finds the block by its first line. Where somebody took the last line away, it ends at the last of the known lines. */
export const findBlock = (content: SheetContent, known: (text: string) => boolean): Block | undefined => {
  const cells = new SheetCells(content);
  for (let row = cells.firstRow; row < cells.endRow; row++)
    for (let column = cells.firstColumn; column < cells.endColumn; column++) {
      if (!BEGINS.includes(textIn(cells.at(row, column)))) continue;
      let last = row + 1;
      let end = 0;
      for (let r = row + 1; r < cells.endRow && end === 0; r++) {
        if (ENDS.includes(textIn(cells.at(r, column)))) end = r;
        if (known(textIn(cells.at(r, column)))) last = r + 1;
      }
      const lines: BlockLine[] = [];
      for (let r = row + 1; r < (end || last); r++) lines.push(lineAt(cells, r, column));
      const filling = Number(/\d+/.exec(textIn(cells.at(row, column + 1)))?.[0] ?? 0);
      return { row, column, end: end > 0 ? end + 1 : last, filling, lines };
    }
  return undefined;
};
