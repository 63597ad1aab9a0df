import { isDittoText } from '../core/text/absent';
import type { Cell } from '../functions/define';
import { columnLetters, quoted } from './address';
import type { SheetContent } from './port';
import { ROW_NUMBER } from './row-sources';
import { SheetCells } from './sheet-cells';
import type { RecognisedTable } from './tables';

/** A cell that says "as above", and the cell that it means. */
export interface Ditto {
  readonly row: number;
  readonly column: number;
  readonly key: string;
  readonly typed: string;
  /** Row of the cell that is meant. */
  readonly origin: number;
  readonly meant: Cell;
}

/** What names one row alone, and free text in which the mark may be meant as such. */
const NEVER_FILLED: ReadonlySet<string> = new Set(['channel', 'serial', 'inputChannel', 'remarks']);

/** Dittos of the channel list by row. They reach up to the next cell that says something, never across a gap in the list. */
export type Dittos = ReadonlyMap<number, readonly Ditto[]>;

export const dittosOf = (table: RecognisedTable, content: SheetContent): Dittos => {
  const found = new Map<number, Ditto[]>();
  if (table.table !== 'channels') return found;
  const cells = new SheetCells(content);
  const skipped = new Set(table.skippedRows);
  for (const [key, { column }] of table.columns) {
    if (NEVER_FILLED.has(key)) continue;
    let above: { readonly row: number; readonly meant: Cell; readonly typed?: string } | undefined;
    for (let row = table.firstRow; row <= table.lastRow; row++) {
      const cell = skipped.has(row) ? null : cells.at(row, column);
      if (typeof cell !== 'string' || !isDittoText(cell)) {
        above = cell === null || typeof cell === 'object' ? undefined : { row, meant: cell };
        continue;
      }
      // One mark for the whole run: the formulas count it.
      if (above?.typed !== undefined && above.typed !== cell) above = undefined;
      if (!above || skipped.has(row)) continue;
      above = { ...above, typed: cell };
      const ditto = { row, column, key, typed: cell, origin: above.row, meant: above.meant };
      const line = found.get(row);
      if (line) line.push(ditto);
      else found.set(row, [ditto]);
    }
  }
  return found;
};

/** The cells of a row as they are meant. */
export const withDittos = (
  cells: readonly Cell[],
  dittos: readonly Ditto[] | undefined,
  firstColumn: number,
): readonly Cell[] => {
  if (!dittos) return cells;
  const meant = [...cells];
  for (const { column, meant: value } of dittos) meant[column - firstColumn] = value;
  return meant;
};

/**
 * What a formula says in place of the cell: the cell above, as long as all cells between say "as above"; then the cell
 * itself, once somebody wrote a value over the mark. Otherwise not known, until the list is checked again.
 */
const meantExpression = ({ row, column, typed, origin }: Ditto): string => {
  const letters = `$${columnLetters(column)}`;
  const [cell, above] = [`${letters}${row + 1}`, `${letters}${origin + 1}`];
  const isSame = `SUMPRODUCT(--EXACT(${letters}${origin + 2}:${cell},${quoted(typed)}))=${row - origin}`;
  return `IF(${isSame},IF(${above}="",NA(),${above}),IF(OR(${cell}="",${cell}=${quoted(typed)}),NA(),${cell}))`;
};

/** Formulas of a row with what its dittos mean in place of the cells that hold them. */
export const dittoFormulas = (formulas: readonly string[], dittos: readonly Ditto[]): string[] =>
  formulas.map((formula) =>
    dittos
      .reduce(
        (text, ditto) => text.replaceAll(`$${columnLetters(ditto.column)}${ROW_NUMBER}`, () => meantExpression(ditto)),
        formula,
      )
      .replaceAll(ROW_NUMBER, String(dittos[0]!.row + 1)),
  );
