import type { RangeAddress } from '../../workbook/port';
import { cellAddress } from '../../workbook/address';
import { holds, parseRange } from './cell-reference';
import { refuse } from './refuse';
import type { CellRecord } from './sheet-walk';

interface ArrayBlock {
  readonly range: RangeAddress;
  readonly row: number;
  readonly column: number;
  readonly what: string;
  readonly own: boolean;
  /** Its formula was overwritten, so that its other cells are free. */
  released: boolean;
}

/** Blocks of cells that one formula fills. Such a block can only be replaced as a whole, and only when it is ours. */
export class ArrayBlocks {
  private readonly blocks: ArrayBlock[] = [];

  constructor(private readonly sheet: string) {}

  /** Notes the block that starts in this cell; its first cell comes before all others. */
  note(cell: CellRecord, isOwn: (formula: string) => boolean): void {
    const { type, ref, text } = cell.formula!;
    const range = type === 'array' || type === 'dataTable' ? parseRange(ref ?? '') : undefined;
    if (!range || range.rows * range.columns === 1) return;
    const what = type === 'array' ? 'a formula that fills several cells' : 'a data table';
    const own = type === 'array' && isOwn(text);
    this.blocks.push({ range, row: cell.row, column: cell.column, what, own, released: false });
  }

  /** Whether the cell was filled by a formula of ours that is gone now. */
  isFreed(row: number, column: number): boolean {
    return this.blocks.length > 0 && this.blocks.some((block) => block.released && holds(block.range, row, column));
  }

  /** Refuses a cell that somebody else's formula fills; overwriting the first cell of a block of ours frees the rest. */
  claim(row: number, column: number, emptying: boolean): void {
    for (const block of this.blocks) {
      if (block.released || !holds(block.range, row, column)) continue;
      if (block.own && block.row === row && block.column === column) block.released = true;
      else if (!block.own || !emptying)
        refuse('occupied', `Cell ${cellAddress(row, column)} of sheet ${this.sheet} belongs to ${block.what}.`);
    }
  }
}
