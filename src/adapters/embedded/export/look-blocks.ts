import type { RangeAddress } from '../../../workbook/port';
import type { WholeLook } from '../../../workbook/whole-look';

export interface LookBlock {
  readonly range: RangeAddress;
  readonly look: WholeLook;
}

/** Gathers cells, given row by row: those of one look side by side are one block, and so are equal runs below each other. */
export class LookBlocks {
  private readonly runs: { row: number; column: number; columns: number; look: WholeLook; key: string }[] = [];

  add(row: number, column: number, look: WholeLook | undefined): void {
    if (!look || Object.keys(look).length === 0) return;
    const key = JSON.stringify(look);
    const last = this.runs.at(-1);
    if (last?.row === row && last.column + last.columns === column && last.key === key) last.columns += 1;
    else this.runs.push({ row, column, columns: 1, look, key });
  }

  blocks(): LookBlock[] {
    const blocks: { range: { row: number; column: number; rows: number; columns: number }; look: WholeLook }[] = [];
    const open = new Map<string, (typeof blocks)[number]>();
    for (const { row, column, columns, look, key } of this.runs) {
      const above = open.get(`${column} ${columns} ${key}`);
      if (above && above.range.row + above.range.rows === row) above.range.rows += 1;
      else {
        const block = { range: { row, column, rows: 1, columns }, look };
        blocks.push(block);
        open.set(`${column} ${columns} ${key}`, block);
      }
    }
    return blocks;
  }
}
