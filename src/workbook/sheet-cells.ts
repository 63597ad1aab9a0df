import type { Cell } from '../functions/define';
import type { RangeAddress, SheetContent } from './port';

/** A sheet by its own rows and columns, whatever part of it was read. */
export class SheetCells {
  readonly firstRow: number;
  readonly endRow: number;
  readonly firstColumn: number;
  readonly endColumn: number;

  constructor(readonly content: SheetContent) {
    this.firstRow = content.row;
    this.endRow = content.row + content.values.length;
    this.firstColumn = content.column;
    this.endColumn = content.values.reduce((end, row) => Math.max(end, content.column + row.length), content.column);
  }

  at(row: number, column: number): Cell {
    const cell = this.content.values[row - this.content.row]?.[column - this.content.column] ?? null;
    return typeof cell === 'string' && cell.trim() === '' ? null : cell;
  }

  /** The cell's text, the text of a merged heading in each column it spans. */
  headingAt(row: number, column: number): string {
    const cell = this.at(row, column);
    if (cell !== null) return typeof cell === 'object' ? '' : String(cell).trim();
    const merge = this.mergedIn(row).find((m) => column > m.column && column < m.column + m.columns);
    const spread = merge ? this.at(merge.row, merge.column) : null;
    return typeof spread === 'string' ? spread.trim() : '';
  }

  /** How many columns the cell is merged over. */
  mergedWidth(row: number, column: number): number {
    return this.mergedIn(row).find((m) => column >= m.column && column < m.column + m.columns)?.columns ?? 1;
  }

  private merges?: ReadonlyMap<number, readonly RangeAddress[]>;
  /** Merged ranges over several columns, by their first row. */
  private mergedIn(at: number): readonly RangeAddress[] {
    if (!this.merges) {
      const byRow = new Map<number, RangeAddress[]>();
      for (const merge of this.content.merged) {
        if (merge.columns === 1) continue;
        const row = byRow.get(merge.row);
        if (row) row.push(merge);
        else byRow.set(merge.row, [merge]);
      }
      this.merges = byRow;
    }
    return this.merges.get(at) ?? [];
  }

  isBlankRow(row: number, columns: readonly number[]): boolean {
    return columns.every((column) => this.at(row, column) === null);
  }
}
