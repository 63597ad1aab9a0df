import type { Language } from '../../core/language';
import type { IWorkbookData } from '@univerjs/core';
import { EditLog } from '../../adapters/embedded/edit-log';
import { newWorkbook, type ShownSheet } from '../../adapters/embedded/export/new-workbook';
import { changedLooks } from '../../adapters/embedded/export/changed-looks';
import { hasNewDrawings, wholeSheet } from '../../adapters/embedded/export/whole-sheet';
import { numberFormatOf, spillsOf, withFormulas } from '../../adapters/embedded/grid-facts';
import type { Host } from '../../adapters/embedded/host';
import type { EmbeddedSpreadsheet } from '../../adapters/embedded/spreadsheet';
import { workbookFromFile } from '../../adapters/embedded/import/workbook';
import { browserCodec } from '../../adapters/xlsx/codec-browser';
import { FormulaNames } from '../../adapters/xlsx/formula-names';
import { shiftFormula } from '../../adapters/xlsx/formula-text';
import { withTrustedMaker } from '../../adapters/xlsx/trusted-maker';
import { openWorkbook, type WorkbookFile } from '../../adapters/xlsx/workbook-file';
import { FUNCTIONS } from '../../functions/index';
import { tablesOfEachList } from '../../workbook/channel-lists';
import { checkChanges } from '../../workbook/check';
import { HostProblem, type SheetContent } from '../../workbook/port';
import { readResults } from '../../workbook/results';
import { WRITER_SETTING } from '../../workbook/remedies/written-by';
import { PlanSession } from '../../workbook/session';
import { copyName, download, nameParts } from './download';
import { lostKinds } from './lost-kinds';
import { SAVE_WORDS, savedWords } from './save-words';
import { matchGrid, saveIntoFile, type GridSheet, type SavedFile } from './save-file';

const FUNCTION_NAMES = FUNCTIONS.map(({ name }) => name);

interface Opened {
  readonly bytes: Uint8Array;
  readonly name: string;
  readonly values: ReadonlyMap<string, Pick<SheetContent, 'row' | 'column' | 'values'>>;
}

/** Keeps the file behind the open workbook, and writes what was done back into a copy of it. */
export class Saving {
  private readonly log: EditLog;
  private opened: Opened | undefined;
  private settingsOfFile: readonly string[] = [];

  constructor(
    private readonly host: Host,
    private readonly spreadsheet: EmbeddedSpreadsheet,
    private readonly language: Language,
  ) {
    this.log = new EditLog(host);
  }

  /** Called when there is something to save, and when there is nothing any more. */
  onChange: (canSave: boolean) => void = () => undefined;

  get canSave(): boolean {
    return this.opened !== undefined;
  }

  /** To be called before another workbook takes the place of this one, so that the two never mix. */
  forget(): void {
    this.opened = undefined;
    this.onChange(false);
  }

  /** To be called when the grid shows the file and nobody has changed anything yet. */
  async remember(bytes: Uint8Array, name: string): Promise<void> {
    const values = new Map<string, Pick<SheetContent, 'row' | 'column' | 'values'>>();
    for (const sheet of await this.spreadsheet.sheets()) {
      const { row, column, values: cells } = await this.spreadsheet.readSheet(sheet.name);
      values.set(sheet.name, { row, column, values: cells });
    }
    await this.takeSettings(bytes);
    this.log.begin();
    this.opened = { bytes, name, values };
    this.onChange(true);
  }

  /** Sentences on what was restructured, so that the file's own form cannot be kept; empty when it can. */
  obstacles(): readonly string[] {
    return this.log.restructured().map(SAVE_WORDS[this.language].restructured);
  }

  /** What a new workbook would lack of what the file has. */
  losses(): readonly string[] {
    return lostKinds(this.file().bytes, browserCodec).map((kind) => SAVE_WORDS[this.language].lost[kind]);
  }

  /** Saves a copy of the opened file with the edits in it. Returns what to tell. Rejects with a HostProblem. */
  async saveCopy(): Promise<string> {
    const { name } = this.file();
    const saved = await this.copy();
    download(saved.bytes, copyName(name));
    return savedWords(copyName(name), saved, this.log.besideContent(), this.language);
  }

  /** The opened file with what was done here; where the file cannot take that over, a new workbook. */
  async bytes(): Promise<Uint8Array> {
    return this.obstacles().length > 0 ? this.newBytes() : (await this.copy()).bytes;
  }

  private async copy(): Promise<SavedFile> {
    const { bytes, values } = this.file();
    const { tables, contents } = await this.readGrid();
    const renamed = this.log.renamed();
    const before = new Map([...values].map(([name, opened]) => [renamed.get(name) ?? name, opened]));
    const sheets = new Map<string, GridSheet>();
    const isStyled = [...before.keys()].some((sheet) => this.log.lookedAt(sheet).length > 0);
    const asOpened = isStyled ? await workbookFromFile(bytes, this.file().name) : undefined;
    for (const [sheet, grid] of contents)
      sheets.set(sheet, {
        grid,
        opened: before.get(sheet) ?? { row: 0, column: 0, values: [] },
        spills: spillsOf(this.host, sheet),
        wasWritten: (row, column) => this.log.wasWritten(sheet, row, column),
        numberFormat: (row, column) => numberFormatOf(this.host, sheet, row, column),
        looks: (isOurs) => this.looks(sheet, asOpened, isOurs),
      });
    const added = new Set(this.log.added());
    const whole = [...contents.values()]
      .filter(({ sheet }) => added.has(sheet) || hasNewDrawings(this.host, sheet))
      .map((content) => wholeSheet(this.host, content));
    return saveIntoFile(bytes, open(bytes), sheets, tables, await this.settings(), {
      renamed,
      added: whole.filter(({ content }) => added.has(content.sheet)),
      renewed: whole.filter(({ content }) => !added.has(content.sheet)),
    });
  }

  private looks(
    sheet: string,
    asOpened: IWorkbookData | undefined,
    isOurs: (row: number, column: number) => boolean,
  ): ReturnType<GridSheet['looks']> {
    const cells = this.log.lookedAt(sheet).filter(([row, column]) => !isOurs(row, column));
    return asOpened && cells.length > 0 ? changedLooks(this.host, sheet, asOpened, cells) : [];
  }

  /** Makes a workbook from what the grid shows alone. */
  async saveNew(): Promise<string> {
    const words = SAVE_WORDS[this.language];
    const file = words.newWorkbook(nameParts(this.file().name).stem);
    download(await this.newBytes(), file);
    return words.savedNew(file);
  }

  private async newBytes(): Promise<Uint8Array> {
    const { name } = this.file();
    const { tables, contents } = await this.readGrid();
    const names = new FormulaNames(FUNCTION_NAMES);
    const marks = (content: SheetContent) => {
      const plan = tables && tablesOfEachList(tables).find(({ channels }) => channels.sheet === content.sheet);
      return plan && readResults(plan.channels, content)
        ? checkChanges(plan, content).flatMap((change) => (change.kind === 'marks' ? change.rules : []))
        : [];
    };
    const shown = new Map<string, ShownSheet>();
    for (const [sheet, content] of contents)
      shown.set(sheet, { content, spills: spillsOf(this.host, sheet), marks: marks(content) });
    const workbook = this.host.api.getActiveWorkbook();
    if (!workbook) throw new HostProblem('No workbook is open.', 'not-found');
    const { stem } = nameParts(name);
    const stored = (formula: string) => names.write(formula);
    const made = await newWorkbook(workbook.save(), shown, { title: stem, stored });
    const copy = open(withTrustedMaker(made));
    matchGrid(copy, shown);
    for (const [key, json] of await this.settings()) copy.setSetting(key, json);
    return copy.save();
  }

  /**
   * Settings as they are now; those that the file had and that are gone are there without a value. A mere check adds no
   * part to a file that has none of ours, hence not which version wrote.
   */
  private async settings(): Promise<ReadonlyMap<string, string | undefined>> {
    const settings = new Map<string, string | undefined>();
    for (const key of new Set([...this.settingsOfFile, ...this.spreadsheet.settingKeys()]))
      if (key !== WRITER_SETTING) settings.set(key, await this.spreadsheet.getSetting(key));
    return settings;
  }

  private file(): Opened {
    if (!this.opened) throw new HostProblem('No workbook is open.', 'not-found');
    return this.opened;
  }

  private async readGrid() {
    await this.spreadsheet.calculated();
    const { tables } = await new PlanSession(this.spreadsheet).read();
    const contents = new Map<string, SheetContent>();
    for (const { name } of await this.spreadsheet.sheets())
      contents.set(name, await withFormulas(this.host, await this.spreadsheet.readSheet(name), shiftFormula));
    return { tables, contents };
  }

  /** The grid does not read our settings from the file. One that the editor refuses is shown all the same. */
  private async takeSettings(bytes: Uint8Array): Promise<void> {
    try {
      const file = open(bytes);
      for (const [key, json] of file.settings) await this.spreadsheet.setSetting(key, json);
      this.settingsOfFile = [...file.settings.keys()];
    } catch (problem) {
      if (!(problem instanceof HostProblem)) throw problem;
    }
  }
}

const open = (bytes: Uint8Array): WorkbookFile =>
  openWorkbook(bytes, { codec: browserCodec, functionNames: FUNCTION_NAMES });
