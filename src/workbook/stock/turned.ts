import type { SheetContent } from '../port';

const turnedBlock = <T>(block: readonly (readonly T[])[], empty: T): T[][] => {
  const width = block.reduce((most, line) => Math.max(most, line.length), 0);
  return Array.from({ length: width }, (_, c) => block.map((line) => line[c] ?? empty));
};

/** A sheet with rows and columns changed about, for lists whose properties stand in rows. */
export const turnedSheet = (content: SheetContent): SheetContent => ({
  ...content,
  row: content.column,
  column: content.row,
  values: turnedBlock(content.values, null),
  formulas: turnedBlock(content.formulas, ''),
  tables: [],
  merged: content.merged.map(({ row, column, rows, columns }) => ({ row: column, column: row, rows: columns, columns: rows })), // prettier-ignore
  hiddenRows: [],
});
