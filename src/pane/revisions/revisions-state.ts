import { countIn, type Language } from '../../core/language';
import { comparePlans } from '../../plan/compare';
import { compareContent, type CompareContent, type CompareEntry } from '../../workbook/compare/compare-content';
import { comparedWorkbook, type WorkbookSource } from '../../workbook/compare/compared-plan';
import { parseMapping } from '../../workbook/mapping';
import { judgePlan } from '../../workbook/plan-of';
import type { CellNote } from '../../workbook/own-note';
import type { Place } from '../../workbook/plan-view';
import { sentenceOf, type Spreadsheet } from '../../workbook/port';
import { recognise, type SheetToRead } from '../../workbook/recognise';
import { copySource } from '../../workbook/returned/copy-source';
import { returnedCells, type Returned, type ReturnedCell } from '../../workbook/returned/returned-cells';
import { RETURNED_WORDS } from '../../workbook/returned/returned-words';
import { asReadOf, takenChanges, wantedCells } from '../../workbook/returned/take-back';
import { withStockSheet } from '../../workbook/stock/read-stock';
import { takeStock } from '../../workbook/stock/take-stock';
import { MAPPING_SETTING, type PlanSession } from '../../workbook/session';
import { REVISION_WORDS, type RevisionWords } from './revisions-words';

/** Another workbook, read beside the open one. */
export interface PlanFile {
  readonly sheets: readonly SheetToRead[];
  getSetting(key: string): string | undefined;
  notesOn?(sheet: string): readonly CellNote[];
}
/** Rejects with a sentence where the bytes are no workbook. */
export type ReadPlanFile = (bytes: Uint8Array) => Promise<PlanFile>;
export interface PickedFile {
  readonly name: string;
  arrayBuffer(): Promise<ArrayBuffer>;
}

export type Part = 'compare' | 'returned' | 'stock';

/** Comparing with another file, and taking a returned copy back. Draws nothing itself. */
export class RevisionsState {
  busy?: Part;
  told?: { readonly at: Part; readonly text: string; readonly isProblem: boolean };
  comparison?: { readonly name: string; readonly content: CompareContent };
  returned?: Returned;
  copyName = '';
  sentName = '';
  readonly whole = new Set<string>();
  chosen: ReadonlySet<string> = new Set();
  private copy?: PlanFile;
  private sent?: PlanFile;
  private placeOf: (entry: CompareEntry) => Place | undefined = () => undefined;

  constructor(
    private readonly spreadsheet: Spreadsheet,
    private readonly session: PlanSession,
    readonly language: Language,
    private readonly read: ReadPlanFile,
    private readonly pane: { follow(): Promise<void>; read(): Promise<void>; go(place: Place): void },
    private readonly changed: () => void,
  ) {}

  get words(): RevisionWords {
    return REVISION_WORDS[this.language];
  }
  count(number: number): string {
    return countIn(number, this.language);
  }

  /** Another workbook was opened. */
  reset(): void {
    this.told = this.comparison = this.returned = this.copy = this.sent = undefined;
    this.copyName = this.sentName = '';
    this.chosen = new Set();
    this.whole.clear();
  }

  compare(file: PickedFile): Promise<void> {
    return this.during('compare', file, (earlier) => {
      this.comparison = undefined;
      const tables = recognise(earlier.sheets, { mapping: parseMapping(earlier.getSetting(MAPPING_SETTING)) });
      if (!tables.channels) return this.words.noPlan(file.name);
      const contentOf = contentIn(earlier);
      const before = comparedWorkbook({ tables, contentOf, judged: judgePlan(tables, contentOf, this.language) });
      const after = comparedWorkbook(this.source());
      const content = compareContent(comparePlans(before, after), this.language);
      this.placeOf = ({ channel, item }) =>
        channel !== undefined ? after.places[channel] : item && after.placeOfItem(item.table, item.name);
      this.comparison = { name: file.name, content };
      return undefined;
    });
  }

  takeBack(file: PickedFile): Promise<void> {
    return this.during('returned', file, (copy) => {
      [this.copy, this.copyName] = [copy, file.name];
      return this.list();
    });
  }

  /** The copy as it left, to tell the customer's changes from ours. */
  asItLeft(file: PickedFile): Promise<void> {
    return this.during('returned', file, (sent) => {
      [this.sent, this.sentName] = [sent, file.name];
      return this.copy ? this.list() : undefined;
    });
  }

  /** Lays the sensors of another workbook out on our sheet; the plan looks them up there from now on. */
  takeStock(file: PickedFile): Promise<void> {
    return this.working('stock', async () => {
      const { sheets } = await this.readFile(file);
      const told = await takeStock(this.spreadsheet, sheets, file.name, this.language);
      await this.session.remember(withStockSheet(this.session.corrections));
      await this.pane.read();
      return { text: this.words.stockTaken(told.map((text) => text.replace(/[^.]$/, '$&.')).join(' ')), isProblem: false }; // prettier-ignore
    });
  }

  goTo(entry: CompareEntry): (() => void) | undefined {
    const place = this.placeOf(entry);
    return place && (() => this.pane.go(place));
  }
  goToCell({ at }: ReturnedCell): void {
    this.pane.go(at);
  }

  showWhole(key: string): void {
    this.whole.add(key);
    this.changed();
  }

  isChosen(cell: ReturnedCell): boolean {
    return this.chosen.has(keyOf(cell));
  }
  choose(cell: ReturnedCell, isChosen: boolean): void {
    const chosen = new Set(this.chosen);
    if (isChosen) chosen.add(keyOf(cell));
    else chosen.delete(keyOf(cell));
    this.chosen = chosen;
    this.changed();
  }
  chooseEasy(): void {
    this.chosen = new Set(wantedCells(this.returned?.cells ?? [], {}).map(keyOf));
    this.changed();
  }
  chooseNone(): void {
    this.chosen = new Set();
    this.changed();
  }

  /** Writes the chosen cells as one action. */
  async take(): Promise<void> {
    const cells = (this.returned?.cells ?? []).filter((cell) => this.isChosen(cell));
    if (this.busy || cells.length === 0) return;
    await this.working('returned', async () => {
      const changes = takenChanges(cells);
      const asRead = asReadOf(changes, this.source().contentOf);
      await this.spreadsheet.apply(changes, { label: RETURNED_WORDS[this.language].step, asRead });
      await this.spreadsheet.calculated();
      await this.pane.follow();
      this.chosen = new Set();
      this.comparison = undefined;
      const problem = this.list();
      return { text: problem ?? this.words.taken(this.count(cells.length), cells.length === 1), isProblem: problem !== undefined }; // prettier-ignore
    });
  }

  private source(): WorkbookSource {
    const { tables, contentOf, judged } = this.session.source;
    if (!tables.channels || !judged) throw new Error(this.words.checkFirst);
    return { tables, contentOf, judged };
  }

  /** Lists what the copy has otherwise; says why where it cannot. */
  private list(): string | undefined {
    this.returned = undefined;
    const plan = this.source();
    const read = (file: PlanFile) =>
      copySource(
        plan,
        file.sheets.map(({ content }) => content),
        file.notesOn && ((sheet) => file.notesOn!(sheet)),
      );
    const copy = this.copy && read(this.copy);
    if (!copy) return this.words.noCopy(this.copyName);
    const sent = this.sent && read(this.sent);
    if (this.sent && !sent) return this.words.noCopy(this.sentName);
    this.returned = returnedCells(plan, copy, sent);
    const there = new Set(this.returned.cells.map(keyOf));
    this.chosen = new Set([...this.chosen].filter((key) => there.has(key)));
    return undefined;
  }

  private async readFile(file: PickedFile): Promise<PlanFile> {
    try {
      return await this.read(new Uint8Array(await file.arrayBuffer()));
    } catch (error) {
      throw new Error(this.words.notRead(file.name, sentenceOf(error, this.language)));
    }
  }

  private during(part: Part, file: PickedFile, work: (read: PlanFile) => string | undefined): Promise<void> {
    return this.working(part, async () => {
      const problem = work(await this.readFile(file));
      return problem === undefined ? undefined : { text: problem, isProblem: true };
    });
  }

  private async working(
    part: Part,
    work: () => Promise<{ readonly text: string; readonly isProblem: boolean } | undefined>,
  ): Promise<void> {
    if (this.busy) return;
    this.busy = part;
    this.told = undefined;
    this.changed();
    try {
      const told = await work();
      this.told = told && { at: part, ...told };
    } catch (error) {
      this.told = { at: part, text: sentenceOf(error, this.language), isProblem: true };
    } finally {
      this.busy = undefined;
      this.changed();
    }
  }
}

/** Nothing where no other file can be read. */
export const revisionsWith = (
  read: ReadPlanFile | undefined,
  spreadsheet: Spreadsheet,
  session: PlanSession,
  pane: ConstructorParameters<typeof RevisionsState>[4] & { readonly language: Language },
  changed: () => void,
): RevisionsState | undefined => read && new RevisionsState(spreadsheet, session, pane.language, read, pane, changed);

const keyOf = ({ at: { sheet, row, column } }: ReturnedCell): string => `${row} ${column} ${sheet}`;

const contentIn =
  ({ sheets }: PlanFile) =>
  (sheet: string): SheetToRead['content'] => {
    const found = sheets.find(({ info }) => info.name === sheet);
    if (!found) throw new Error(`no sheet ${sheet}`);
    return found.content;
  };
