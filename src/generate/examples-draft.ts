import type { Cell, CellStyle, WriteSheet } from 'hucre';
import type { FileCell, FileChange } from '../adapters/xlsx/changes';
import type { RangeAddress } from '../workbook/port';

const FONT = { name: 'Calibri', size: 10 };
const INK = { rgb: '1F2A2E' };
const ACCENT = { rgb: '0F4C4A' };
export const title: CellStyle = { font: { ...FONT, size: 15, bold: true, color: ACCENT } };
export const strong: CellStyle = { font: { ...FONT, size: 12, bold: true, color: INK } };
export const plain: CellStyle = { font: { ...FONT, color: INK } };
const line = { bottom: { style: 'hair', color: { rgb: 'C9D3D1' } } } as const;
export const body = (isNumber: boolean): CellStyle => ({
  font: { ...FONT, color: INK },
  alignment: { horizontal: isNumber ? 'right' : 'left', vertical: 'top' },
  border: line,
});
export const heading = (isNumber: boolean): CellStyle => ({
  font: { ...FONT, bold: true, color: ACCENT },
  fill: { type: 'pattern', pattern: 'solid', fgColor: { rgb: 'E6EFEE' } },
  alignment: { wrapText: true, vertical: 'center', horizontal: isNumber ? 'right' : 'left' },
  border: { bottom: { style: 'thin', color: ACCENT } },
});

/** A sheet of constants and looks, and the formulas that are then written into it. */
export interface LaidOut {
  readonly sheet: WriteSheet;
  readonly changes: readonly FileChange[];
}

/** A sheet while it is being filled. */
export class Draft {
  readonly cells = new Map<string, Partial<Cell>>();
  readonly changes: FileChange[] = [];
  private last = 0;

  constructor(readonly name: string) {}

  put(row: number, column: number, value: string | number | null, style: CellStyle): void {
    this.cells.set(`${row},${column}`, { value, style });
    this.last = Math.max(this.last, row);
  }
  /** The cell must have been put before, so that its look stays. */
  write(row: number, column: number, cells: FileCell[][]): void {
    this.changes.push({ kind: 'cells', sheet: this.name, row, column, cells });
  }
  mark(range: RangeAddress): void {
    const look = { ink: '#9b2d12', ground: '#fbeee7' };
    const rules = ['differ', 'not calculated'].map((equals) => ({ range, equals, ...look }));
    this.changes.push({ kind: 'marks', sheet: this.name, rules });
  }
  done(more: Partial<WriteSheet>): LaidOut {
    const rows = Array.from({ length: this.last + 1 }, () => []);
    const page = { paperSize: 'a3', orientation: 'landscape', fitToPage: true, fitToWidth: 1, fitToHeight: 0 } as const;
    return {
      sheet: { name: this.name, rows, cells: this.cells, pageSetup: page, ...more },
      changes: this.changes,
    };
  }
}
