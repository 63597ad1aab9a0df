import type { Cell } from '../../functions/define';
import {
  HostProblem,
  type ApplyOptions,
  type Capabilities,
  type Change,
  type RangeAddress,
  type SheetContent,
  type SheetInfo,
  type Spreadsheet,
} from '../../workbook/port';
import type { FileChange, FormulaCell } from './changes';
import type { FileSheetContent } from './sheet-read';
import type { WorkbookFile } from './workbook-file';

/** A sheet with its values worked out, and the blocks that formulas fill beyond their own cell. */
export interface CalculatedSheet extends Pick<SheetContent, 'sheet' | 'row' | 'column' | 'values'> {
  readonly blocks?: readonly RangeAddress[];
}
/** Works out all formulas of a saved workbook; who wires the parts together brings an engine that can. */
export type Calculate = (workbook: Uint8Array, sheets: readonly string[]) => Promise<readonly CalculatedSheet[]>;

type Selection = { sheet: string; range: RangeAddress };

/** The port over a workbook file in memory. Nothing reaches the disk before somebody saves `file`. */
export class FileSpreadsheet implements Spreadsheet {
  readonly host = 'file';
  readonly can: Capabilities = { notes: true, oneUndo: false, changeEvents: false, drawings: 'in the file' };
  /** Formulas that were written without a value. */
  private readonly waiting = new Map<string, { sheet: string; row: number; column: number; formula: string }>();
  private selected: Selection | undefined;

  constructor(
    readonly file: WorkbookFile,
    private readonly calculate?: Calculate,
  ) {}

  async sheets(): Promise<readonly SheetInfo[]> {
    return this.file.sheets;
  }

  async readSheet(sheet: string): Promise<FileSheetContent> {
    return this.file.readSheet(sheet);
  }

  async apply(changes: readonly Change[], { onProgress, signal }: ApplyOptions): Promise<void> {
    if (signal?.aborted) throw new HostProblem('Cancelled before anything was changed.', 'cancelled');
    this.file.edit(changes);
    for (const change of changes) {
      if (change.kind === 'clear') this.forget(change.sheet, change.range);
      if (change.kind === 'cells') this.remember(change);
    }
    onProgress?.(changes.length, changes.length);
  }

  async select(sheet: string, range: RangeAddress): Promise<void> {
    this.selected = { sheet, range };
  }

  async selection(): Promise<Selection | undefined> {
    return this.selected;
  }

  /** Stores the values of formulas written since the last call, so that programs without the add-in show them. */
  async calculated(): Promise<void> {
    if (this.waiting.size === 0 || !this.calculate) return;
    const names = this.file.sheets.map(({ name }) => name);
    const sheets = await this.calculate(this.file.save(), names);
    this.file.edit(this.valueChanges(new Map(sheets.map((sheet) => [sheet.sheet.toLowerCase(), sheet]))));
    this.waiting.clear();
  }

  async onChange(): Promise<() => void> {
    return () => undefined;
  }

  async onSelect(): Promise<() => void> {
    return () => undefined;
  }

  async getSetting(key: string): Promise<string | undefined> {
    return this.file.getSetting(key);
  }

  async setSetting(key: string, json: string | undefined): Promise<void> {
    this.file.setSetting(key, json);
  }

  private remember({ sheet, row, column, cells }: Extract<Change, { kind: 'cells' }>): void {
    cells.forEach((line, r) =>
      line.forEach((cell, c) => {
        const at = { sheet, row: row + r, column: column + c };
        const key = keyOf(at);
        if (typeof cell === 'string' && cell.startsWith('=') && cell.length > 1)
          this.waiting.set(key, { ...at, formula: cell });
        else this.waiting.delete(key);
      }),
    );
  }

  private forget(sheet: string, { row, column, rows, columns }: RangeAddress): void {
    for (const [key, at] of this.waiting) {
      const inside = at.row >= row && at.row < row + rows && at.column >= column && at.column < column + columns;
      if (inside && at.sheet.toLowerCase() === sheet.toLowerCase()) this.waiting.delete(key);
    }
  }

  /** One change per run of waiting cells in a row. */
  private valueChanges(sheets: ReadonlyMap<string, CalculatedSheet>): FileChange[] {
    const changes: (FileChange & { kind: 'cells'; cells: FormulaCell[][] })[] = [];
    const inOrder = [...this.waiting.values()].sort(
      (a, b) => a.sheet.localeCompare(b.sheet) || a.row - b.row || a.column - b.column,
    );
    for (const { sheet, row, column, formula } of inOrder) {
      const calculated = sheets.get(sheet.toLowerCase());
      if (!calculated) continue;
      const cell: FormulaCell = { formula, value: calculatedValue(calculated, row, column) };
      const last = changes.at(-1);
      if (last?.sheet === sheet && last.row === row && last.column + last.cells[0]!.length === column)
        last.cells[0]!.push(cell);
      else changes.push({ kind: 'cells', sheet, row, column, cells: [[cell]] });
    }
    return changes;
  }
}

const keyOf = (at: { sheet: string; row: number; column: number }): string =>
  `${at.sheet.toLowerCase()} ${at.row} ${at.column}`;

function calculatedValue(sheet: CalculatedSheet, row: number, column: number): Cell | Cell[][] {
  const at = (r: number, c: number): Cell => sheet.values[r - sheet.row]?.[c - sheet.column] ?? null;
  const block = sheet.blocks?.find((range) => range.row === row && range.column === column);
  if (!block) return at(row, column);
  return Array.from({ length: block.rows }, (_, r) =>
    Array.from({ length: block.columns }, (__, c) => at(row + r, column + c)),
  );
}
