import type { Language } from '../../core/language';
import { HostProblem, sentenceOf, type SheetInfo, type Spreadsheet } from '../../workbook/port';
import { SHARE_DEFAULTS, type DocumentProperties, type ShareChoices } from '../../workbook/share/choices';
import { headedColumns, shareProposals } from '../../workbook/share/proposals';
import type { PlanSession } from '../../workbook/session';
import { forgetFile, saveFile, type OfferedFile } from '../papers/offered-file';
import type { Surroundings } from '../surroundings';
import { SHARE_WORDS, type ShareWords } from './share-words';

interface Work {
  during(what: 'reading' | 'writing', work: () => Promise<void>): Promise<void>;
}

/** A column or sheet that a person may leave out. */
export interface Leaving {
  readonly key: string;
  readonly label: string;
  /** Why it is proposed; absent: it is merely possible. */
  readonly why?: string;
  readonly sheet: string;
  readonly column?: number;
}

const keyOf = (sheet: string, column?: number): string => `${sheet}!${column ?? ''}`;

/** The copy for a customer: what is left out, how it looks, and the file that was made. */
export class ShareState {
  choices: Omit<ShareChoices, 'leftOutColumns' | 'leftOutSheets'>;
  readonly leftOut = new Set<string>();
  file?: OfferedFile;
  told: readonly string[] = [];
  private sheets: readonly SheetInfo[] = [];

  constructor(
    private readonly spreadsheet: Spreadsheet,
    private readonly session: PlanSession,
    readonly language: Language,
    readonly surroundings: Surroundings,
    private readonly pane: Work,
    private readonly changed: () => void,
  ) {
    this.choices = { ...SHARE_DEFAULTS, language };
    void this.findSheets();
  }

  get words(): ShareWords {
    return SHARE_WORDS[this.language];
  }

  set(what: Partial<ShareState['choices']>): void {
    this.choices = { ...this.choices, ...what };
    this.changed();
  }

  /** What is said of the copy; a blank leaves it to the plan. */
  say(what: keyof DocumentProperties, text: string): void {
    this.choices = { ...this.choices, properties: { ...this.choices.properties, [what]: text.trim() || undefined } };
  }

  leave(key: string, isLeft: boolean): void {
    if (isLeft) this.leftOut.add(key);
    else this.leftOut.delete(key);
    this.changed();
  }

  /** Another workbook was opened. */
  reset(): void {
    forgetFile(this.file);
    this.file = undefined;
    this.told = [];
    this.leftOut.clear();
    this.choices = { ...this.choices, properties: {} };
    void this.findSheets();
  }

  /** Everything that can be left out; what is proposed comes first. */
  leavings(): readonly Leaving[] {
    const { tables } = this.session.source;
    const { channels } = tables;
    const { words } = this;
    const proposals = shareProposals(tables, this.sheets);
    const whyColumn = new Map(
      proposals.columns.map(({ sheet, column, why }) => [keyOf(sheet, column), words.why[why]]),
    );
    const whySheet = new Map(proposals.sheets.map(({ sheet, why }) => [sheet, words.why[why]]));
    const named = channels?.columns.get('channel')?.column;
    const all: Leaving[] = [
      ...headedColumns(tables)
        .filter(({ sheet, column }) => sheet !== channels?.sheet || column !== named)
        .map(({ sheet, column, heading }) => {
          const key = keyOf(sheet, column);
          return { key, label: `${sheet}: ${heading}`, sheet, column, why: whyColumn.get(key) };
        }),
      ...this.sheets
        .filter(({ name }) => name !== channels?.sheet)
        .map(({ name }) => ({ key: keyOf(name), label: words.sheet(name), sheet: name, why: whySheet.get(name) })),
    ];
    return [...all.filter(({ why }) => why !== undefined), ...all.filter(({ why }) => why === undefined)];
  }

  make(): Promise<void> {
    return this.pane.during('writing', async () => {
      forgetFile(this.file);
      this.file = undefined;
      const { shareCopy } = this.surroundings;
      if (!shareCopy) {
        this.told = [this.words.notHere];
        return;
      }
      const chosen = this.leavings().filter(({ key }) => this.leftOut.has(key));
      const choices: ShareChoices = {
        ...this.choices,
        leftOutColumns: chosen.flatMap(({ sheet, column }) => (column === undefined ? [] : [{ sheet, column }])),
        leftOutSheets: chosen.flatMap(({ sheet, column }) => (column === undefined ? [sheet] : [])),
      };
      try {
        const { bytes, told } = await shareCopy(choices, this.language);
        const name = `${this.stem} - ${SHARE_WORDS[choices.language].fileName}.xlsx`;
        this.file = { name, url: URL.createObjectURL(new Blob([bytes as BlobPart])) };
        this.told = told;
        saveFile(this.file);
      } catch (problem) {
        if (!(problem instanceof HostProblem)) throw problem;
        this.told = [`${this.words.failed} ${sentenceOf(problem, this.language)}`];
      }
    });
  }

  private get stem(): string {
    const name = this.surroundings.planName() ?? this.session.source.tables.channels?.sheet ?? '';
    return name.replace(/\.xls[xm]$/i, '');
  }

  private async findSheets(): Promise<void> {
    this.sheets = await this.spreadsheet.sheets();
  }
}
