import type { RangeAddress } from './port';

/** 0 → A, 25 → Z, 26 → AA. */
export const columnLetters = (column: number): string => {
  let letters = '';
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / 26))
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  return letters;
};

/** 0-based row and column → B7. */
export const cellAddress = (row: number, column: number): string => `${columnLetters(column)}${row + 1}`;

/** $B$7 */
export const fixedCell = (row: number, column: number): string => `$${columnLetters(column)}$${row + 1}`;

export const rangeAddress = ({ row, column, rows, columns }: RangeAddress): string => {
  const first = cellAddress(row, column);
  const last = cellAddress(row + rows - 1, column + columns - 1);
  return first === last ? first : `${first}:${last}`;
};

/** A sheet name as a formula needs it, with its exclamation mark. */
export const sheetPrefix = (sheet: string): string =>
  /^[A-Za-z_][A-Za-z0-9_]*$/.test(sheet) && !/^[A-Za-z]{1,3}[0-9]+$/.test(sheet) && !/^R[0-9]*C?[0-9]*$/i.test(sheet)
    ? `${sheet}!`
    : `'${sheet.replace(/'/g, "''")}'!`;

/** A formula text literal. */
export const quoted = (text: string): string => `"${text.replace(/"/g, '""')}"`;
