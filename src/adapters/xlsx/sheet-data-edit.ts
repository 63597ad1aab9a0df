import type { Cell } from '../../functions/define';
import type { WholeLook } from '../../workbook/whole-look';
import { ArrayBlocks } from './array-blocks';
import { ByteSink } from './byte-sink';
import { cellAddress } from '../../workbook/address';
import { cellXml, writeShaped } from './cell-xml';
import type { FormulaShape } from './formula-shape';
import { shiftFormula } from './formula-text';
import { refuse } from './refuse';
import { EffectSweep, inputOf, RowPlan, type CellInput, type ColumnPlan, type Effect } from './sheet-effects';
import { cellValue, SharedFormulas, type ReadContext } from './sheet-read';
import type { CellRecord, RowRecord } from './sheet-walk';
import type { XmlScanner } from './xml-scan';
import { escapeXml, fromUtf8 } from './xml-text';
import { onOff } from './xml-tree';

/** What the editing of cells needs from the workbook around the sheet. */
export interface EditContext extends Pick<ReadContext, 'strings' | 'names' | 'from1904'> {
  readonly sheet: string;
  styleFor(base: number, look: WholeLook): number;
  /** Index of the cell metadata that marks a formula as one that spills. */
  spillMetadata(): string;
}

/** Thrown to start over once the rows turn out to be out of order. */
export class RowsOutOfOrder extends Error {}

/** Rewrites the cell data while the sheet is walked: touched cells are written anew, everything between is copied. */
export class SheetDataEdit {
  formulasChanged = false;
  /** Cells that were not written have formulas. */
  hasOtherFormulas = false;
  private readonly sink = new ByteSink(EMIT_BYTES);
  private readonly sweep: EffectSweep;
  private readonly newRows: readonly number[];
  private nextNewRow = 0;
  private lastRow = -1;
  private plan = new RowPlan([]);
  private columns: readonly number[] = [];
  private nextColumn = 0;
  private rowStyle: number | undefined;
  /** A cell was dropped, so the next one must say where it is. */
  private gap = false;
  private readonly arrays: ArrayBlocks;
  private readonly shared = new SharedFormulas();
  private readonly orphaned = new Map<string, { text: string; row: number; column: number }>();

  constructor(
    private readonly bytes: Uint8Array,
    private readonly prefix: string,
    effects: readonly Effect[],
    private readonly context: EditContext,
    private readonly columnStyle: (column: number) => number,
    /** Rows that the sheet has, given when they are known to be out of order. */
    private readonly existing: ReadonlySet<number> | undefined,
    private copied: number,
    /** Takes whole rows, and what stands between them; the bytes are good during the call. */
    private readonly emit: (rows: Uint8Array) => void,
  ) {
    this.sweep = new EffectSweep(effects);
    this.newRows = this.sweep.rows();
    this.arrays = new ArrayBlocks(context.sheet);
  }

  row(row: RowRecord, scanner: XmlScanner): void {
    if (row.row <= this.lastRow && !this.existing) throw new RowsOutOfOrder();
    this.lastRow = Math.max(row.row, this.lastRow);
    this.makeRows(row.row, row.start);
    if (this.sink.size + row.start - this.copied > EMIT_BYTES) {
      this.upTo(row.start);
      this.emit(this.sink.take());
    }
    this.rowStyle = onOff(scanner.attributes.get('customFormat'))
      ? Number(scanner.attributes.get('s') ?? 0)
      : undefined;
    this.enterRow(row.row);
    this.dropSpans(row, scanner);
  }

  cell(cell: CellRecord): void {
    if (cell.formula) {
      if (cell.formula.type === 'shared') this.shared.expand(cell.formula, cell.row, cell.column);
      else this.arrays.note(cell, (formula) => this.context.names.isOwn(formula));
    }
    while ((this.columns[this.nextColumn] ?? Infinity) < cell.column)
      this.newCell(cell.row, this.columns[this.nextColumn++]!, cell.start);
    if (this.columns[this.nextColumn] === cell.column) this.nextColumn++;
    const plan = this.plan.at(cell.column);
    const asked = plan && inputOf(plan, cell.row, cell.column);
    if (cell.formula && asked === undefined) this.hasOtherFormulas = true;
    const freed = asked === undefined && this.arrays.isFreed(cell.row, cell.column);
    const behindGap = this.gap && !cell.hasReference;
    this.gap = false;
    if (freed) this.editCell(cell, plan ?? UNPLANNED, null, behindGap);
    else if (plan) this.editCell(cell, plan, asked, behindGap);
    else {
      if (behindGap) this.nameCell(cell);
      this.adoptOrphan(cell);
    }
  }

  rowEnd(row: RowRecord): void {
    if (!row.selfClosing)
      while (this.nextColumn < this.columns.length)
        this.newCell(row.row, this.columns[this.nextColumn++]!, row.closeStart);
    else {
      const cells = this.cellsText(row.row);
      if (cells === '') return;
      this.upTo(row.openEnd - 2);
      this.sink.text(`>${cells}</${this.prefix}row>`);
      this.copied = row.end;
    }
  }

  /** Ends the cell data: everything from where `copied` began up to here has been emitted then. */
  finish(closeStart: number): void {
    this.makeRows(Infinity, closeStart);
    this.upTo(closeStart);
    if (this.sink.size > 0) this.emit(this.sink.take());
  }

  private upTo(at: number): void {
    this.sink.copy(this.bytes, this.copied, at);
    this.copied = Math.max(this.copied, at);
  }

  private enterRow(row: number): void {
    this.plan = this.sweep.touching(row);
    this.columns = this.plan.columns;
    this.nextColumn = 0;
    this.gap = false;
  }

  private makeRows(before: number, at: number): void {
    for (; (this.newRows[this.nextNewRow] ?? Infinity) < before; this.nextNewRow++) {
      const row = this.newRows[this.nextNewRow]!;
      if (this.existing?.has(row)) continue;
      this.rowStyle = undefined;
      this.enterRow(row);
      const cells = this.cellsText(row);
      if (cells === '') continue;
      this.upTo(at);
      this.sink.text(`<${this.prefix}row r="${row + 1}">${cells}</${this.prefix}row>`);
      if (this.sink.size > EMIT_BYTES) this.emit(this.sink.take());
    }
    if (this.newRows[this.nextNewRow] === before) this.nextNewRow++;
  }

  private cellsText(row: number): string {
    return this.columns.map((column) => this.newCellText(row, column)).join('');
  }

  private newCell(row: number, column: number, at: number): void {
    const plan = this.plan.at(column);
    const input = plan && inputOf(plan, row, column);
    if (!plan || (!input && !plan.look)) return;
    this.upTo(at);
    this.writeCell(row, column, this.newStyle(plan, column), this.claimed(row, column, input ?? null));
  }

  private newCellText(row: number, column: number): string {
    const plan = this.plan.at(column);
    const input = plan && inputOf(plan, row, column);
    if (!plan || (!input && !plan.look)) return '';
    return this.xml(row, column, this.newStyle(plan, column), this.claimed(row, column, input ?? null));
  }

  private claimed(row: number, column: number, input: CellInput | null): CellInput | null {
    if (input) this.arrays.claim(row, column, false);
    if (input?.kind === 'formula') this.formulasChanged = true;
    return input;
  }

  private newStyle(plan: ColumnPlan, column: number): number {
    return this.styled(plan, this.inheritedStyle(column));
  }

  private styled({ look, styles }: ColumnPlan, base: number): number {
    if (!look) return base;
    let style = styles.get(base);
    if (style === undefined) styles.set(base, (style = this.context.styleFor(base, look)));
    return style;
  }

  private writeCell(row: number, column: number, style: number, input: CellInput | null): void {
    if (input?.kind === 'formula' && typeof input.formula !== 'string' && !input.spill)
      writeShaped(this.sink, { row, column, style, prefix: this.prefix }, input.formula, input.value ?? null);
    else this.sink.text(this.xml(row, column, style, input));
  }

  private inheritedStyle(column: number): number {
    return this.rowStyle ?? this.columnStyle(column);
  }

  private xml(row: number, column: number, style: number, input: CellInput | null): string {
    return cellXml({ row, column, style, prefix: this.prefix }, input, () => this.context.spillMetadata());
  }

  private editCell(cell: CellRecord, plan: ColumnPlan, asked: CellInput | null | undefined, behindGap: boolean): void {
    const { resetStyle } = plan;
    const inherited = this.inheritedStyle(cell.column);
    const style = this.styled(plan, resetStyle ? inherited : cell.style);
    const input = asked === undefined ? undefined : this.accept(cell, asked, resetStyle);
    if (input === undefined || this.isSame(cell, input, resetStyle)) return this.restyle(cell, style, behindGap);
    if (cell.formula || input?.kind === 'formula') this.formulasChanged = true;
    if (cell.formula?.type === 'shared' && cell.formula.text !== '')
      this.orphaned.set(cell.formula.shared ?? '', { text: cell.formula.text, row: cell.row, column: cell.column });
    this.upTo(cell.start);
    this.copied = cell.end;
    if (input === null && style === (resetStyle ? inherited : 0)) this.gap = true;
    else this.writeCell(cell.row, cell.column, style, input);
  }

  /** What the cell is to hold, after all refusals. The same formula, not computed yet, keeps the value it had. */
  private accept(cell: CellRecord, input: CellInput | null, resetStyle: boolean): CellInput | null {
    const { row, column } = cell;
    const isFilled = cell.hasValue || cell.formula !== undefined;
    if (isFilled && input?.kind === 'spilled' && !resetStyle && !this.arrays.isFreed(row, column))
      refuse('occupied', `Cell ${cellAddress(row, column)} of sheet ${this.context.sheet} is in the way of a result.`);
    if (isFilled || input) this.arrays.claim(row, column, input === null);
    const unknown = input?.kind === 'formula' && input.value === undefined && !input.spill;
    return unknown && this.hasFormula(cell, input.formula) ? { ...input, value: cellValue(cell, this.context) } : input;
  }

  private hasFormula(cell: CellRecord, formula: string | FormulaShape): boolean {
    const there = cell.formula;
    if (!there || there.type === 'array' || there.type === 'dataTable') return false;
    if (typeof formula === 'string') return this.shared.expand(there, cell.row, cell.column) === formula;
    if (there.type === '' && formula.isWritten(there.bytes, there.from, there.to, cell.row)) return true;
    return this.shared.expand(there, cell.row, cell.column) === formula.text(cell.row);
  }

  private isSame(cell: CellRecord, input: CellInput | null, resetStyle: boolean): boolean {
    if (input === null) return !resetStyle && !cell.hasValue && cell.formula === undefined;
    if (input.kind === 'formula') {
      if (input.spill || !this.hasFormula(cell, input.formula)) return false;
    } else if (cell.formula || input.kind === 'spilled') return false;
    return sameValue(cellValue(cell, this.context), input.value ?? null);
  }

  private restyle(cell: CellRecord, style: number, behindGap: boolean): void {
    if (style !== cell.style) {
      const tag = fromUtf8(this.bytes.subarray(cell.start, cell.openEnd)).replace(/\s+s\s*=\s*("[^"]*"|'[^']*')/, '');
      const name = 2 + this.prefix.length;
      const reference = cell.hasReference ? '' : ` r="${cellAddress(cell.row, cell.column)}"`;
      this.upTo(cell.start);
      this.sink.text(`${tag.slice(0, name)}${reference}${style > 0 ? ` s="${style}"` : ''}${tag.slice(name)}`);
      this.copied = cell.openEnd;
    } else if (behindGap) this.nameCell(cell);
    this.adoptOrphan(cell);
  }

  private nameCell(cell: CellRecord): void {
    this.upTo(cell.start + 2 + this.prefix.length);
    this.sink.text(` r="${cellAddress(cell.row, cell.column)}"`);
  }

  /** A cell that shared the formula of an overwritten cell gets that formula written out. */
  private adoptOrphan(cell: CellRecord): void {
    const { formula } = cell;
    const child = formula?.type === 'shared' && formula.text === '';
    const parent = child ? this.orphaned.get(formula.shared ?? '') : undefined;
    if (!parent) return;
    const own = escapeXml(shiftFormula(parent.text, cell.row - parent.row, cell.column - parent.column));
    const inside = fromUtf8(this.bytes.subarray(cell.openEnd, cell.end));
    this.upTo(cell.openEnd);
    const written = /<(?:[\w.-]+:)?f(?=[\s/>])[^>]*?(?:\/>|>[^<]*<\/[^>]*>)/;
    this.sink.text(inside.replace(written, () => `<${this.prefix}f>${own}</${this.prefix}f>`));
    this.copied = cell.end;
  }

  /** The hint which columns a row uses would be wrong once a cell is added outside. */
  private dropSpans(row: RowRecord, scanner: XmlScanner): void {
    const n = scanner.attributes.find('spans');
    if (n < 0 || this.columns.length === 0) return;
    const [first = 0, last = 0] = scanner.attributes.value(n).split(':').map(Number);
    if (this.columns[0]! + 1 >= first && this.columns.at(-1)! + 1 <= last) return;
    const tag = fromUtf8(this.bytes.subarray(row.start, row.openEnd)).replace(/\s+spans\s*=\s*("[^"]*"|'[^']*')/, '');
    // The end of an empty row's tag may still change, when the row gets its first cells.
    const ending = row.selfClosing ? 2 : 0;
    this.upTo(row.start);
    this.sink.text(tag.slice(0, tag.length - ending));
    this.copied = row.openEnd - ending;
  }
}

const UNPLANNED: ColumnPlan = { writes: [], resetStyle: false, look: undefined, styles: new Map() };

/** Rows are handed on when this much has come together. */
const EMIT_BYTES = 4 * 1024 * 1024;

function sameValue(a: Cell, b: Cell): boolean {
  if (typeof a === 'object' && typeof b === 'object' && a && b) return a.error === b.error;
  return a === b;
}
