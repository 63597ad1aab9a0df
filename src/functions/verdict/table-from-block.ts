import type { TableName } from '../../plan/fields';
import { matchHeadings } from '../../plan/headings';
import type { ColumnReading, TableReading } from '../../plan/table-reading';
import { isCellError, type Block, type Cell } from '../define';

const isBlank = (cell: Cell | undefined): boolean =>
  cell === null || cell === undefined || (typeof cell === 'string' && cell.trim() === '');
export const isBlankRow = (cells: readonly Cell[]): boolean => cells.every(isBlank);

const headingText = (cell: Cell | undefined): string =>
  cell === null || cell === undefined || isCellError(cell) ? '' : String(cell);

/** A range whose first row names its columns; blank rows at its end are left out. Undefined when it is all blank. */
export const tableFromBlock = (name: TableName, block: Block): TableReading | undefined => {
  const [first, ...below] = block;
  if (!first || isBlankRow(first)) return undefined;
  const rows = below.slice(0, below.findLastIndex((cells) => !isBlankRow(cells)) + 1);
  const headings = first.map(headingText);
  const evidence = { columns: headings.map((_, column) => rows.map((cells) => cells[column] ?? null)) };
  const columns = new Map<string, ColumnReading>();
  for (const [key, match] of matchHeadings(name, headings, evidence).columns) {
    const { column, unit, unitText, statistic } = match;
    columns.set(key, { column, heading: headings[column], unit, unitText: unit ? undefined : unitText, statistic });
  }
  // The heading row is row 1 of the range.
  return { name, columns, rows, at: rows.map((_, i) => i + 2) };
};
