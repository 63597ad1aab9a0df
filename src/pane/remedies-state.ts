import { countIn, type Language } from '../core/language';
import { sentenceOf, type Spreadsheet } from '../workbook/port';
import type { FreezePlan, FreezeScope } from '../workbook/remedies/freeze';
import type { BrokenFormula, Rewritten } from '../workbook/remedies/rewrite';
import type { AddInState, ListedIds, Running } from '../workbook/remedies/state';
import { REMEDIES_WORDS, type RemediesWords } from './remedies-words';

/** The commands need the catalogue of functions, which is large: they are loaded when somebody first presses one. */
const freezing = () => import(/* webpackChunkName: "remedies" */ '../workbook/remedies/freeze');
const rewriting = () => import(/* webpackChunkName: "remedies" */ '../workbook/remedies/rewrite');
const reading = () => import(/* webpackChunkName: "remedies" */ '../workbook/remedies/state');

const HINTS_SEEN = 'channelwright.firstStepsSeen';

/** A browser may forbid a page to remember anything; then the hints simply come again. */
const remembered = (): boolean => {
  try {
    return localStorage.getItem(HINTS_SEEN) !== null;
  } catch {
    return false;
  }
};
const remember = (): void => {
  try {
    localStorage.setItem(HINTS_SEEN, '1');
  } catch {
    // Said above.
  }
};

export interface RemediesHost {
  readonly running: Running;
  /** The ids in the list of functions that the program was given. */
  listed(): Promise<ListedIds>;
  /** Cells were written, which a host does not report back. */
  wrote(): void;
}

/** What the remedies show and what a press does. Every command is one action of the spreadsheet. */
export class RemediesState {
  showsHints = !remembered();
  broken?: readonly BrokenFormula[];
  takes: ReadonlySet<BrokenFormula['suspicion']> = new Set<BrokenFormula['suspicion']>(['broken']);
  rewritten?: Rewritten;
  scope: FreezeScope = 'check columns';
  plan?: FreezePlan;
  frozen?: number;
  state?: AddInState;
  copied?: 'copied' | 'by hand';
  problem?: string;
  isBusy = false;
  isOpen = false;

  constructor(
    private readonly spreadsheet: Spreadsheet,
    private readonly host: RemediesHost,
    readonly language: Language,
    private readonly changed: () => void,
  ) {}

  get words(): RemediesWords {
    return REMEDIES_WORDS[this.language];
  }

  count = (number: number): string => countIn(number, this.language);

  get chosen(): readonly BrokenFormula[] {
    return this.broken?.filter(({ suspicion }) => this.takes.has(suspicion)) ?? [];
  }

  showHints(shown: boolean): void {
    this.showsHints = shown;
    if (!shown) remember();
    this.changed();
  }

  find(): Promise<void> {
    return this.during(async () => {
      this.rewritten = undefined;
      this.takes = new Set(['broken']);
      this.broken = await (await rewriting()).findBroken(this.spreadsheet);
    });
  }

  take(suspicion: BrokenFormula['suspicion'], on: boolean): void {
    const takes = new Set(this.takes);
    if (on) takes.add(suspicion);
    else takes.delete(suspicion);
    this.takes = takes;
    this.changed();
  }

  rewrite(): Promise<void> {
    return this.during(async () => {
      const label = this.words.namesTitle;
      const { rewriteFormulas } = await rewriting();
      this.rewritten = await rewriteFormulas(this.spreadsheet, this.chosen, { label });
      this.broken = undefined;
      this.host.wrote();
    });
  }

  choose(scope: FreezeScope): void {
    this.scope = scope;
    this.plan = undefined;
    this.changed();
  }

  look(): Promise<void> {
    return this.during(async () => {
      this.frozen = undefined;
      this.plan = await (await freezing()).planFreeze(this.spreadsheet, this.scope);
    });
  }

  freeze(): Promise<void> {
    return this.during(async () => {
      const { freezeToValues } = await freezing();
      if (this.plan) this.frozen = await freezeToValues(this.spreadsheet, this.plan, { label: this.words.freezeTitle });
      this.plan = undefined;
      this.host.wrote();
    });
  }

  forget(): void {
    this.plan = undefined;
    this.changed();
  }

  showState(): Promise<void> {
    return this.during(async () => {
      this.copied = undefined;
      const listed = await this.host.listed().catch(() => undefined);
      const { readState } = await reading();
      this.state = await readState(this.spreadsheet, this.host.running, listed);
    });
  }

  async copy(text: string): Promise<void> {
    try {
      await navigator.clipboard.writeText(text);
      this.copied = 'copied';
    } catch {
      this.copied = 'by hand';
    }
    this.changed();
  }

  go({ sheet, row, column }: Pick<BrokenFormula, 'sheet' | 'row' | 'column'>): void {
    void this.spreadsheet.select(sheet, { row, column, rows: 1, columns: 1 }).catch((error: unknown) => {
      this.problem = sentenceOf(error, this.language);
      this.changed();
    });
  }

  /** Another workbook is open: nothing found before is true of it. */
  reset(): void {
    this.broken = this.rewritten = this.plan = this.frozen = this.state = this.problem = undefined;
    this.changed();
  }

  private async during(work: () => Promise<void>): Promise<void> {
    if (this.isBusy) return;
    this.isBusy = true;
    this.problem = undefined;
    this.changed();
    try {
      await work();
    } catch (error) {
      this.problem = sentenceOf(error, this.language);
    } finally {
      this.isBusy = false;
      this.changed();
    }
  }
}
