import { isCellError } from '../../functions/define';
import type { AsRead, SheetContent } from '../port';
import type { RecognisedTable } from '../tables';

/**
 * The headings of a list and the names of its items as they were read. When these stand where they stood, what is
 * written beside them lands in the right rows, even if somebody else works on the same workbook.
 */
export const keysAsRead = (table: RecognisedTable, content: SheetContent): readonly AsRead[] => {
  const { sheet, headerRow, headerRows, firstRow, lastRow, firstColumn, lastColumn, columns } = table;
  const cell = (row: number, column: number) => {
    const [r, c] = [row - content.row, column - content.column];
    const value = content.values[r]?.[c] ?? null;
    return content.formulas[r]?.[c] || (isCellError(value) ? value.error : value);
  };
  const block = (row: number, rows: number, column: number, width: number): AsRead => ({
    sheet,
    row,
    column,
    cells: Array.from({ length: rows }, (_r, i) => Array.from({ length: width }, (_c, k) => cell(row + i, column + k))),
  });
  const key = columns.get('id')?.column ?? firstColumn;
  return [
    block(headerRow, headerRows, firstColumn, lastColumn - firstColumn + 1),
    block(firstRow, lastRow - firstRow + 1, key, 1),
  ];
};
