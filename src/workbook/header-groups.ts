import type { SheetCells } from './sheet-cells';

/** Sheet columns with their headings. */
export type Headings = ReadonlyMap<number, string>;

/** Merged over some of the columns: the heading of a group, not a title. */
const isGroup = (cells: SheetCells, row: number, column: number, columns: readonly number[]): boolean => {
  const width = cells.mergedWidth(row, column);
  return width > 1 && width < columns.length && cells.headingAt(row, column) !== '';
};
/** Names under the headings of groups are read together with them. */
export const isBelowGroups = (cells: SheetCells, row: number, columns: readonly number[]): boolean =>
  row > cells.firstRow && columns.some((column) => isGroup(cells, row - 1, column, columns));

/** The last row still holds headings of groups, and the next one their names. */
export const hasNamesBelow = (cells: SheetCells, last: number, columns: readonly number[]): boolean =>
  last + 1 < cells.endRow &&
  columns.some((column) => isGroup(cells, last, column, columns) && cells.at(last + 1, column) !== null);

/** The headings that stand in their own columns alone, where those of groups were joined to them. */
export const ownHeadings = (
  cells: SheetCells,
  row: number,
  rows: number,
  headings: Headings,
  join: (cells: SheetCells, row: number, rows: number, column: number) => string,
): Headings => {
  const own = new Map<number, string>();
  const columns = [...headings.keys()];
  for (const [column, joined] of headings) {
    let from = row;
    while (from < row + rows - 1 && isGroup(cells, from, column, columns)) from++;
    const alone = from === row ? joined : join(cells, from, row + rows - from, column);
    if (alone !== joined && alone !== '') own.set(column, alone);
  }
  return own;
};
