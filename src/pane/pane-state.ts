import type { Verdict } from '../core/verdict';
import { countIn, type Language } from '../core/language';
import type { FieldView, Place, PlanView } from '../workbook/plan-view';
import type { Candidate } from '../plan/choosing/rank';
import { editsForCandidate } from '../workbook/choosing/use-candidate';
import { sentenceOf } from '../workbook/port';
import type { PlanSession } from '../workbook/session';
import type { ChooseState } from './choosing/choose-state';
import type { PapersState } from './papers/papers-state';
import type { RevisionsState } from './revisions/revisions-state';
import type { ShareState } from './share/share-state';
import { TryState, type Trial } from './choosing/try-state';
import { PANE_WORDS, type PaneWords } from './words';

export interface Busy {
  readonly what: keyof PaneWords['busy'];
  readonly done: number;
  readonly total: number;
}

const pause = (): Promise<void> => new Promise((turn) => setTimeout(turn));

/** What the pane shows and what a press does. Draws nothing itself: it says when something changed. */
export class PaneState {
  view?: PlanView;
  busy?: Busy;
  problem?: string;
  shown: ReadonlySet<Verdict> = new Set<Verdict>(['FAIL', 'INCOMPLETE', 'WARN']);
  pages = 1;
  openRow?: number;
  /** Draws the open row; loaded once the pane stands. */
  rowPart?: typeof import('./row-part');
  /** Report, notes and saved corrections; wired where the pane is mounted. */
  papers?: PapersState;
  /** Comparing with other files; absent where none can be read. */
  revisions?: RevisionsState;
  share?: ShareState;
  /** Choosing a sensor for the open row. */
  choosing?: ChooseState;
  /** Changes that are tried before they are written. */
  readonly trying: TryState;
  private stop = { aborted: false };
  private readonly opened = new Map<string, boolean>();

  constructor(
    readonly session: PlanSession,
    readonly language: Language,
    private readonly changed: () => void,
    private readonly progressed: () => void,
  ) {
    this.trying = new TryState(session, () => this.shownRows(), changed);
  }

  get words(): PaneWords {
    return PANE_WORDS[this.language];
  }

  /** A count as the language writes it. */
  count(number: number): string {
    return countIn(number, this.language);
  }

  /** Reads the workbook afresh, as after another one was opened. */
  refresh(): Promise<void> {
    this.openRow = undefined;
    this.choosing = undefined;
    this.papers?.reset();
    this.revisions?.reset();
    this.share?.reset();
    this.trying.drop();
    this.opened.clear();
    this.pages = 1;
    return this.during('reading', () => this.read());
  }

  /** Reads again after somebody edited cells; quiet, since the person is typing. */
  async follow(): Promise<void> {
    try {
      await this.session.settled();
      await this.read('edit');
    } catch (error) {
      this.problem = sentenceOf(error, this.language);
    }
    this.changed();
  }

  check(): Promise<void> {
    return this.during('checking', async () => {
      const isFirst = !this.session.isChecked;
      await this.session.check({ signal: this.stop, onProgress: (done, total) => this.progress(done, total) });
      await this.read('edit');
      if (isFirst) await this.session.goToResults();
    });
  }

  correct(field: FieldView, column: number | null): Promise<void> {
    return this.during('reading', async () => {
      await this.session.correct(field, column);
      if (this.session.isChecked) await this.session.check({ signal: this.stop });
      await this.read();
    });
  }

  chooseList(sheet: string, belongs: boolean): Promise<void> {
    return this.during('reading', async () => {
      const wasChecked = this.session.isChecked;
      await this.session.chooseList(sheet, belongs);
      this.openRow = undefined;
      this.choosing = undefined;
      await this.session.read();
      if (wasChecked) await this.session.check({ signal: this.stop });
      await this.read();
    });
  }

  cancel(): void {
    this.stop.aborted = true;
  }

  toggle(verdict: Verdict): void {
    const shown = new Set(this.shown);
    if (!shown.delete(verdict)) shown.add(verdict);
    this.shown = shown;
    this.pages = 1;
    this.changed();
  }

  more(): void {
    this.pages += 1;
    this.changed();
  }

  isOpen(section: string, openAtFirst: boolean): boolean {
    return this.opened.get(section) ?? openAtFirst;
  }

  setOpen(section: string, open: boolean): void {
    this.opened.set(section, open);
    this.changed();
  }

  /** Opens a row's detail, or closes it, and shows the row in the sheet. */
  choose(row: number): void {
    this.openRow = this.openRow === row ? undefined : row;
    this.choosing = undefined;
    this.prepareRow();
    this.changed();
    void this.reporting(this.session.goToRow(row));
  }

  /** Fetches what draws an open row. */
  loadRowPart(): Promise<void> {
    const load = async () => {
      this.rowPart = await import(/* webpackChunkName: "row" */ './row-part');
      this.prepareRow();
      this.changed();
    };
    return this.reporting(load());
  }

  private prepareRow(): void {
    const { rowPart, openRow } = this;
    if (rowPart && openRow !== undefined)
      this.choosing ??= new rowPart.ChooseState(this.session, openRow, () => this.shownRows(), this.changed);
  }

  /** Ranks the types for what is being chosen. */
  rank(): Promise<void> {
    return this.reporting(this.choosing?.rank(pause) ?? Promise.resolve());
  }

  /** Writes a type with its parts into the rows it was ranked for; verdicts follow from the cells. */
  useCandidate(candidate: Candidate): Promise<void> {
    const rows = this.choosing?.ranked ?? [];
    return this.write(() => this.session.use(editsForCandidate(rows, candidate)));
  }

  /** Any one action that writes into the list. */
  write(work: () => Promise<unknown>): Promise<void> {
    return this.during('writing', async () => {
      await work();
      await this.session.settled();
      await this.read('edit');
    });
  }

  /** Adds what was typed to what is tried. */
  tryChange(): Promise<void> {
    return this.reporting(this.trying.add(pause));
  }

  tryWithout(trial: Trial): Promise<void> {
    return this.reporting(this.trying.remove(trial, pause));
  }

  tryAgain(): Promise<void> {
    return this.reporting(this.trying.judge(pause));
  }

  /** Writes what was tried into the list. */
  keepTried(): Promise<void> {
    const { outcome } = this.trying;
    return this.write(async () => {
      if (outcome) await this.session.keep(outcome);
      this.trying.drop();
    });
  }

  goToRow(row: number): void {
    void this.reporting(this.session.goToRow(row));
  }

  shownRows(): readonly number[] {
    return (this.view?.results?.rows ?? []).filter(({ verdict }) => this.shown.has(verdict)).map(({ row }) => row);
  }

  go(place: Place): void {
    void this.reporting(this.session.goTo(place));
  }

  /** First what the cells say, then, after a turn for the page, what the plan as a whole says. */
  async read(after: 'opening' | 'edit' = 'opening'): Promise<void> {
    this.view = await this.session.read(after);
    this.trying.stale();
    this.changed();
    await pause();
    this.view = this.session.judge();
  }

  private progress(done: number, total: number): void {
    this.busy = { what: 'checking', done, total };
    this.progressed();
  }

  private async reporting(work: Promise<void>): Promise<void> {
    try {
      await work;
    } catch (error) {
      this.problem = sentenceOf(error, this.language);
      this.changed();
    }
  }

  /** Runs one thing at a time and turns whatever goes wrong into a sentence. */
  async during(what: Busy['what'], work: () => Promise<void>): Promise<void> {
    if (this.busy) return;
    this.busy = { what, done: 0, total: 0 };
    this.problem = undefined;
    this.stop = { aborted: false };
    this.changed();
    try {
      await work();
    } catch (error) {
      this.problem = sentenceOf(error, this.language);
    } finally {
      this.busy = undefined;
      this.changed();
    }
  }
}
