import type { RangeAddress } from '../../workbook/port';
import { LAST_COLUMN, LAST_ROW } from './limits';

/** Letters to a 0-based column, -1 when there is no such column. */
export function columnNumber(letters: string): number {
  let n = 0;
  for (const letter of letters.toUpperCase()) n = n * 26 + letter.charCodeAt(0) - 64;
  return n >= 1 && n <= LAST_COLUMN + 1 ? n - 1 : -1;
}

/** "B3" or "$B$3" as 0-based place; undefined when it is no cell of a sheet. */
export function parseCell(text: string): { row: number; column: number } | undefined {
  const found = /^\$?([A-Za-z]{1,3})\$?([0-9]{1,7})$/.exec(text.trim());
  if (!found) return undefined;
  const column = columnNumber(found[1]!);
  const row = Number(found[2]) - 1;
  return column < 0 || row < 0 || row > LAST_ROW ? undefined : { row, column };
}

export function parseRange(text: string): RangeAddress | undefined {
  const [from, to, more] = text.split(':');
  const a = parseCell(from ?? '');
  const b = to === undefined ? a : parseCell(to);
  if (!a || !b || more !== undefined) return undefined;
  return {
    row: Math.min(a.row, b.row),
    column: Math.min(a.column, b.column),
    rows: Math.abs(a.row - b.row) + 1,
    columns: Math.abs(a.column - b.column) + 1,
  };
}

export const holds = (range: RangeAddress, row: number, column: number): boolean =>
  row >= range.row && row < range.row + range.rows && column >= range.column && column < range.column + range.columns;

export const overlap = (a: RangeAddress, b: RangeAddress): boolean =>
  a.row < b.row + b.rows &&
  b.row < a.row + a.rows &&
  a.column < b.column + b.columns &&
  b.column < a.column + a.columns;

/** Reads a cell reference straight from the bytes of an attribute: row * 16384 + column, or -1. */
export function packedReference(bytes: Uint8Array, from: number, to: number): number {
  let column = 0;
  let at = from;
  for (; at < to; at++) {
    const letter = bytes[at]! & 0xdf;
    if (letter < 65 || letter > 90) break;
    column = column * 26 + letter - 64;
    if (column > LAST_COLUMN + 1) return -1;
  }
  let row = 0;
  for (; at < to; at++) {
    const digit = bytes[at]! - 48;
    if (digit < 0 || digit > 9) return -1;
    row = row * 10 + digit;
    if (row > LAST_ROW + 1) return -1;
  }
  return column === 0 || row === 0 ? -1 : (row - 1) * (LAST_COLUMN + 1) + column - 1;
}
