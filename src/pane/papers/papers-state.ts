import type { Language } from '../../core/language';
import { NOTES_SETTING } from '../../workbook/plan-notes/record';
import { isMappingProblem, mappingSentence, mappingText, readMapping } from '../../workbook/mapping-file';
import type { Spreadsheet } from '../../workbook/port';
import type { Paper } from '../../workbook/report/html-style';
import { isNotesSheet, NO_NOTES, type PlanNotes } from '../../workbook/report/plan-notes';
import type { PlanSession } from '../../workbook/session';
import type { Mapping } from '../../workbook/tables';
import type { Surroundings } from '../surroundings';
import { forgetFile, offerFile, openFile, saveFile, type OfferedFile } from './offered-file';
import { PAPER_WORDS, type PaperWords } from './paper-words';

const TYPES = { page: ['html', 'text/html'], markdown: ['md', 'text/markdown'] } as const;
const today = (): string => {
  const now = new Date();
  const two = (part: number) => String(part).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
};

/** The pane's way to do one thing at a time and to show what goes wrong. */
interface Work {
  during(what: 'reading' | 'writing', work: () => Promise<void>): Promise<void>;
  read(): Promise<void>;
}

/** Report, notes, channel sheets and saved corrections: what a person takes away from the plan. */
export class PapersState {
  kind: 'page' | 'markdown' = 'page';
  paper: Paper = 'A4';
  reportLanguage: Language;
  report?: OfferedFile;
  /** What was done last, by where it is shown. */
  told: { readonly at: 'report' | 'summary' | 'notes' | 'mapping' | 'sheet'; readonly text: string } | undefined;

  constructor(
    private readonly spreadsheet: Spreadsheet,
    private readonly session: PlanSession,
    readonly language: Language,
    readonly surroundings: Surroundings,
    private readonly pane: Work,
    private readonly changed: () => void,
  ) {
    this.reportLanguage = language;
  }

  get words(): PaperWords {
    return PAPER_WORDS[this.language];
  }

  set(what: Partial<Pick<PapersState, 'kind' | 'paper' | 'reportLanguage'>>): void {
    Object.assign(this, what);
    this.changed();
  }

  /** Another workbook was opened. */
  reset(): void {
    forgetFile(this.report);
    this.report = undefined;
    this.told = undefined;
  }

  makeReport(): Promise<void> {
    return this.pane.during('reading', async () => {
      const source = this.judged('report');
      if (!source) return;
      const { kind, reportLanguage: language, paper } = this;
      const { makeReport } = await import(/* webpackChunkName: "report" */ '../../workbook/report/make-report');
      const notes = await this.personsNotes();
      const name = this.surroundings.planName() ?? source.tables.channels?.sheet ?? '';
      const text = makeReport(source, this.language, { kind, language, paper, name, notes });
      const [ending, type] = TYPES[kind];
      forgetFile(this.report);
      this.report = offerFile(text, `${this.stem} - ${PAPER_WORDS[language].report}.${ending}`, type);
      this.told = undefined;
      saveFile(this.report);
    });
  }

  openReport(): void {
    const isOpen = this.report !== undefined && openFile(this.report);
    this.told = isOpen ? undefined : { at: 'report', text: this.words.noWindow };
    this.changed();
  }

  fillNotes(): Promise<void> {
    return this.pane.during('writing', async () => {
      const source = this.judged('notes');
      if (!source) return;
      const { fillPlanNotes } = await import(/* webpackChunkName: "report" */ '../../workbook/plan-notes/fill');
      const { byRow, limits, readings } = source.judged;
      const notes = { checks: [...byRow.values()], limits, readings };
      const { language } = this;
      const filled = await fillPlanNotes(this.spreadsheet, source.tables, notes, { language, today: today() });
      this.told = { at: 'notes', text: filled.told };
      const { sheet, block } = filled;
      await this.session.goTo({ sheet, row: block?.row ?? 0, column: block?.column ?? 0 });
    });
  }

  /** Makes or renews the summary sheet, and shows it. */
  summarySheet(): Promise<void> {
    return this.pane.during('writing', async () => {
      const source = this.judged('summary');
      if (!source) return;
      const { writeSummarySheet } = await import(/* webpackChunkName: "report" */ '../../workbook/summary-sheet');
      const sheet = await writeSummarySheet(this.spreadsheet, source, await this.personsNotes(), this.language);
      this.told = { at: 'summary', text: this.withDrawings(this.words.summaryMade(sheet), this.words.chartsInFile) };
      await this.session.goTo({ sheet, row: 0, column: 0 });
    });
  }

  /** Makes a sheet with all that is known of the channel in this row. */
  channelSheet(row: number): Promise<void> {
    return this.pane.during('writing', async () => {
      const source = this.judged('sheet');
      if (!source) return;
      const { writeChannelSheet } = await import(/* webpackChunkName: "report" */ '../../workbook/channel-sheet');
      const sheet = await writeChannelSheet(this.spreadsheet, source, row, this.language);
      if (sheet === undefined) return;
      this.told = { at: 'sheet', text: this.withDrawings(this.words.sheetMade(sheet), this.words.plotsInFile) };
      await this.session.goTo({ sheet, row: 0, column: 0 });
    });
  }

  saveMapping(): void {
    const text = mappingText(this.session.corrections);
    this.told = text === undefined ? { at: 'mapping', text: this.words.nothingCorrected } : undefined;
    if (text !== undefined) {
      const file = offerFile(text, `${this.stem} - ${this.words.mappingFile}.json`, 'application/json');
      saveFile(file);
      setTimeout(() => forgetFile(file), 60_000);
    }
    this.changed();
  }

  loadMapping(file: { readonly name: string; text(): Promise<string> }): Promise<void> {
    return this.pane.during('reading', async () => {
      const mapping = this.mappingIn(await file.text(), file.name);
      if (typeof mapping !== 'string') {
        await this.session.take(mapping);
        await this.pane.read();
      }
      this.told = { at: 'mapping', text: typeof mapping === 'string' ? mapping : this.takenFrom(file.name, mapping) };
    });
  }

  /** The corrections in a file, or why there are none. */
  private mappingIn(text: string, name: string): Mapping | string {
    try {
      const mapping = readMapping(JSON.parse(text.replace(/^\ufeff/, '')));
      return isMappingProblem(mapping) ? `“${name}”: ${mappingSentence(mapping, this.language)}` : mapping;
    } catch {
      return this.words.noJson(name);
    }
  }

  private takenFrom(name: string, mapping: Mapping): string {
    const { tables } = this.session.source;
    const fields = Object.entries(mapping).flatMap(([table, { fields: given }]) =>
      Object.values(given ?? {}).map(({ column }) => ({ table: table as keyof Mapping, heading: column?.heading })),
    );
    const missing = fields.flatMap(({ table, heading }) =>
      heading !== undefined && ![...(tables[table]?.headings.values() ?? [])].includes(heading) ? [`“${heading}”`] : [],
    );
    const taken = this.words.taken(name, fields.length - missing.length);
    return missing.length === 0 ? taken : `${taken} ${this.words.notHere(missing.join(', '))}`;
  }

  private get stem(): string {
    const { channels } = this.session.source.tables;
    return (this.surroundings.planName() ?? channels?.sheet ?? '').replace(/\.xls[xm]$/i, '');
  }

  /** Says where drawings are found that do not show on the sheet itself. */
  private withDrawings(made: string, inFile: string): string {
    return this.spreadsheet.can.drawings === 'in the file' ? `${made} ${inFile}` : made;
  }

  private judged(at: 'report' | 'summary' | 'notes' | 'sheet') {
    const { tables, contentOf, judged } = this.session.source;
    if (judged) return { tables, contentOf, judged };
    this.told = { at, text: this.words.notYet };
    return undefined;
  }

  private async personsNotes(): Promise<PlanNotes> {
    const sheet = (await this.spreadsheet.sheets()).find(({ name }) => isNotesSheet(name));
    if (!sheet) return NO_NOTES;
    const { personsNotes } = await import(/* webpackChunkName: "report" */ '../../workbook/plan-notes/persons-notes');
    return personsNotes(await this.spreadsheet.readSheet(sheet.name), await this.spreadsheet.getSetting(NOTES_SETTING));
  }
}
