import type { CellNote } from '../../workbook/own-note';
import type { MarkRule, RangeAddress, SheetInfo } from '../../workbook/port';
import type { WholeLook } from '../../workbook/whole-look';
import type { FileChange } from './changes';
import type { Codec } from './codec';
import { FormulaNames } from './formula-names';
import { FILE_LIMITS, type Limits } from './limits';
import { Package } from './package';
import { notPrinted } from './print-area';
import { refuse } from './refuse';
import { relationsOf } from './relations';
import { readSettings, writeSetting } from './settings-part';
import { readSharedStrings } from './shared-strings';
import type { SheetCheck } from './sheet-check';
import { editSheet, type EditedSheet } from './sheet-edit';
import { readSheet, type FileSheetContent, type ReadContext } from './sheet-read';
import { dependentsOf } from './dependents';
import { fitRows } from './fit-rows';
import { putDrawings } from './chart-parts';
import { addFramedSheet, readingFrame } from './sheet-frame';
import { arrangeSheets } from './sheet-order';
import { renameSheets } from './sheet-rename';
import { spillMetadata } from './spill-metadata';
import { planChanges, type SheetPlan } from './sheet-plan';
import { Styles } from './styles';
import { tablesOf } from './tables';
import { updateTablesOf } from './table-headings';
import { setNotes } from './notes-edit';
import { notesOn } from './notes-read';
import { verifyEdits, verifyFile } from './verify';
import { calculateOnOpen, dropCalculationOrder, stylesPart } from './workbook-edit';
import { findWorkbookPart, readWorkbookPart, type SheetEntry, type WorkbookPart } from './workbook-part';

export interface OpenOptions {
  readonly codec: Codec;
  /** Names of all our worksheet functions, without their common first word. */
  readonly functionNames: readonly string[];
  readonly limits?: Limits;
}

export const openWorkbook = (bytes: Uint8Array, options: OpenOptions): WorkbookFile => new WorkbookFile(bytes, options);

/** A workbook file in memory. What is not edited is kept byte for byte. */
export class WorkbookFile {
  /** Sentences for the user about things that may surprise, each once. */
  readonly warnings = new Set<string>();
  private readonly pkg: Package;
  private readonly names: FormulaNames;
  private readonly part: string;
  /** Sheets on which no cell but those that were changed here has a formula. */
  private readonly withoutFormulas = new Set<string>();
  private readonly touched: { sheet: string; range: RangeAddress }[] = [];
  private book: WorkbookPart;
  private strings: readonly string[] | undefined;
  private styles: Styles | undefined;

  constructor(bytes: Uint8Array, options: OpenOptions) {
    this.pkg = new Package(bytes, options.codec, options.limits ?? FILE_LIMITS);
    this.names = new FormulaNames(options.functionNames);
    this.part = findWorkbookPart(this.pkg);
    this.book = readWorkbookPart(this.pkg, this.part);
    if (this.pkg.names().some((name) => name.toLowerCase().startsWith('_xmlsignatures/')))
      this.warnings.add('The workbook is digitally signed. Saving any change makes the signature invalid.');
    if (this.isShared)
      this.warnings.add(
        'The workbook is shared between several people in the old way, with a log of changes. Changes made here are not in that log; stop sharing the workbook before the checked copy takes its place.',
      );
  }

  /** True for a workbook that several people edit at once in the way of older programs, which keep a log of changes. */
  get isShared(): boolean {
    return relationsOf(this.pkg, this.part).some(({ kind }) => /^(?:revisionHeaders|usernames)$/i.test(kind));
  }

  get sheets(): readonly SheetInfo[] {
    return this.book.sheets.map(({ name, active, visible }) => ({ name, active, visible }));
  }

  /** Without formula texts every formula reads as '=', which is all that a long list needs and much less to keep. */
  readSheet(name: string, { formulaTexts = true } = {}): FileSheetContent {
    const { part, name: written } = this.sheet(name);
    const tables = tablesOf(this.pkg, part).map((table) => ({ name: table.name, range: table.range }));
    return readSheet(this.pkg.read(part), part, written, tables, { ...this.context(), formulaTexts });
  }

  /** Notes of people on the cells of a sheet. */
  notesOn(name: string): readonly CellNote[] {
    return notesOn(this.pkg, this.sheet(name).part);
  }

  /** Makes all changes, or none when one of them is refused. */
  edit(changes: readonly FileChange[]): void {
    try {
      this.pkg.atomically(() => this.editAll(changes));
    } finally {
      this.refresh();
    }
  }

  /** Brings the sheets into the order of these names; others stay behind the one they followed. True when it was another. */
  arrange(names: readonly string[]): boolean {
    const isChanged = this.pkg.atomically(() => arrangeSheets(this.pkg, this.part, names));
    if (isChanged) this.refresh();
    return isChanged;
  }

  /** Gives sheets new names, by their old ones, and carries the new ones into everything that refers to them. */
  rename(names: ReadonlyMap<string, string>): void {
    if (names.size === 0) return;
    this.pkg.atomically(() => {
      renameSheets(this.pkg, this.part, names);
      verifyEdits(this.pkg, this.part, new Map());
    });
    this.refresh();
    if (this.pkg.names().some((name) => /vbaProject\.bin$/i.test(name)))
      this.warnings.add(`Macros still know ${[...names.keys()].join(', ')} by the old name.`);
  }

  get settings(): ReadonlyMap<string, string> {
    return readSettings(this.pkg, this.part);
  }

  getSetting(key: string): string | undefined {
    return this.settings.get(key);
  }

  setSetting(key: string, json: string | undefined): void {
    this.pkg.atomically(() => writeSetting(this.pkg, this.part, key, json));
    this.refresh();
  }

  /** Cells of the user whose formulas read cells that were changed here, so that their stored values may be out of date. */
  dependents(): readonly string[] {
    const sheets = this.book.sheets.filter(({ part }) => !this.withoutFormulas.has(part));
    return dependentsOf(this.pkg, sheets, this.touched, this.names);
  }

  /** What to tell when the sheet's print area leaves a range out. */
  notPrinted(sheet: string, range: RangeAddress): string | undefined {
    return notPrinted(this.book.names, sheet, range);
  }

  /** Asks the program that opens the file next to calculate everything; without the add-in our own values get lost then. */
  calculateOnOpen(): void {
    this.pkg.atomically(() => calculateOnOpen(this.pkg, this.part));
    this.refresh();
  }

  /** The whole file, after it has been read back and compared with what was opened. */
  save(): Uint8Array {
    const bytes = this.pkg.save();
    verifyFile(this.pkg, bytes);
    return bytes;
  }

  private refresh(): void {
    this.book = readWorkbookPart(this.pkg, this.part);
    this.styles = undefined;
  }

  private sheet(name: string): SheetEntry {
    const found = this.book.sheets.find((sheet) => sheet.name.toLowerCase() === name.toLowerCase());
    return found ?? refuse('not-found', `The workbook has no sheet ${name}.`);
  }

  private context(): ReadContext {
    const { pkg, names, book } = this;
    this.strings ??= readSharedStrings(pkg, book.sharedStrings);
    const stylesThere = (): Styles | undefined => {
      if (!this.styles && book.styles !== undefined) this.styles = new Styles(pkg, book.styles);
      return this.styles;
    };
    return {
      strings: this.strings,
      names,
      from1904: book.from1904,
      limits: pkg.limits,
      formulaTexts: true,
      isDate: (style) => stylesThere()?.isDate(style) ?? false,
      isCrossedOut: (style) => stylesThere()?.isCrossedOut(style) ?? false,
    };
  }

  private editAll(changes: readonly FileChange[]): void {
    for (const change of changes) if (change.kind === 'sheet') this.makeSheet(change);
    const plans = planChanges(changes, (name) => this.sheet(name), this.names);
    let styles: Styles | undefined;
    const allStyles = (): Styles => (styles ??= new Styles(this.pkg, stylesPart(this.pkg, this.book)));
    let formulasChanged = false;
    const checked = new Map<string, SheetCheck>();
    for (const plan of plans) {
      const edited = this.editOne(plan, allStyles);
      if (edited.formulasChanged) formulasChanged = true;
      checked.set(plan.sheet.part, edited.output.check);
    }
    styles?.flush();
    for (const plan of plans) {
      const { sheet, drawings, fits } = plan;
      fitRows(this.pkg, plan);
      if (drawings) putDrawings(this.pkg, { ...sheet, relationSpace: this.book.relationSpace }, drawings);
      if (drawings || fits.length > 0) checked.delete(sheet.part);
    }
    if (formulasChanged) dropCalculationOrder(this.pkg, this.part);
    verifyEdits(this.pkg, this.part, checked);
  }

  private makeSheet({ name, frame, reading }: Extract<FileChange, { kind: 'sheet' }>): void {
    if (this.book.sheets.some((sheet) => sheet.name.toLowerCase() === name.toLowerCase())) return;
    addFramedSheet(this.pkg, this.part, name, frame ?? (reading ? readingFrame(reading) : {}));
    this.book = readWorkbookPart(this.pkg, this.part);
  }

  /** Edits one sheet and the parts that belong to it. */
  private editOne(plan: SheetPlan, styles: () => Styles): EditedSheet {
    const { pkg, part: workbook } = this;
    const { name: sheet, part } = plan.sheet;
    const before = pkg.read(part);
    updateTablesOf(pkg, plan, () => readSheet(before, part, sheet, [], this.context()));
    const { notes } = plan;
    const edited = editSheet(before, part, plan, {
      ...this.context(),
      sheet,
      packer: (expected) => pkg.packer(expected),
      styleFor: (base: number, look: WholeLook) => styles().styleFor(base, look),
      differential: (rule: MarkRule) => styles().differential(rule),
      spillMetadata: () => spillMetadata(pkg, workbook),
      setNotes: (place, drawing) => (notes ? setNotes(pkg, { sheet, part, ...place }, notes, drawing) : undefined),
    });
    if (edited.isProtected) this.warnings.add(`Sheet ${sheet} is protected; it was changed all the same.`);
    for (const { kind, range } of plan.effects) if (kind !== 'look') this.touched.push({ sheet, range });
    if (!edited.hasOtherFormulas) this.withoutFormulas.add(part);
    if (edited.output.changed)
      pkg.writePacked(
        part,
        edited.output.finish() ?? refuse('host', 'The result could not be packed, so nothing was changed.'),
      );
    return edited;
  }
}
