import type { IRange } from '@univerjs/core';

/** Cells by the sheet's id in the grid, then by row and column. */
export class TouchedCells {
  private readonly sheets = new Map<string, Map<number, Set<number>>>();

  clear(): void {
    this.sheets.clear();
  }

  add(sheetId: string, row: number, column: number): void {
    const rows = this.sheets.get(sheetId) ?? new Map<number, Set<number>>();
    this.sheets.set(sheetId, rows);
    const columns = rows.get(row) ?? new Set<number>();
    rows.set(row, columns.add(column));
  }

  addRange(sheetId: string, { startRow, endRow, startColumn, endColumn }: IRange): void {
    for (let row = startRow; row <= endRow; row++)
      for (let column = startColumn; column <= endColumn; column++) this.add(sheetId, row, column);
  }

  has(sheetId: string, row: number, column: number): boolean {
    return this.sheets.get(sheetId)?.get(row)?.has(column) === true;
  }

  /** Row by row, each from left to right. */
  of(sheetId: string): readonly (readonly [row: number, column: number])[] {
    const rows = [...(this.sheets.get(sheetId) ?? [])].sort(([a], [b]) => a - b);
    return rows.flatMap(([row, columns]) => [...columns].sort((a, b) => a - b).map((column) => [row, column] as const));
  }
}
