import type { FileChange } from '../../adapters/xlsx/changes';
import type { CellDifference } from '../../workbook/cell-differences';

type Cells = Extract<FileChange, { kind: 'cells' }>;

/** Differences as blocks: cells side by side first, then equal runs below each other. They come row by row. */
export const blocksOf = (sheet: string, differences: readonly CellDifference[]): Cells[] => {
  const runs: { row: number; column: number; cells: CellDifference['cell'][] }[] = [];
  for (const { row, column, cell } of differences) {
    const last = runs.at(-1);
    if (last?.row === row && last.column + last.cells.length === column) last.cells.push(cell);
    else runs.push({ row, column, cells: [cell] });
  }
  const blocks: (Cells & { cells: CellDifference['cell'][][] })[] = [];
  const open = new Map<string, (typeof blocks)[number]>();
  for (const { row, column, cells } of runs) {
    const above = open.get(`${column} ${cells.length}`);
    if (above && above.row + above.cells.length === row) above.cells.push(cells);
    else {
      const block = { kind: 'cells' as const, sheet, row, column, cells: [cells] };
      blocks.push(block);
      open.set(`${column} ${cells.length}`, block);
    }
  }
  return blocks;
};
