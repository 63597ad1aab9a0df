import type { Assigner } from '../../plan/assign/assigner';
import type { AssignProgress } from '../../plan/assign/options';
import { outcomeWords } from '../../plan/assign/words';
import { PARTS, stockOf, type Part } from '../../plan/choosing/candidate';
import { assignRows, type ScopedAssignment } from '../../workbook/assign/assign-rows';
import { assignmentEdits, hasColumn, writeAssignment } from '../../workbook/assign/write-assignment';
import { planChanges } from '../../workbook/choosing/row-edits';
import type { JudgedPlan } from '../../workbook/plan-of';
import { sentenceOf, type Spreadsheet } from '../../workbook/port';
import type { PaneState } from '../pane-state';
import { AssignForm } from './assign-form-state';
import { ASSIGN_PANE_WORDS, type AssignPaneWords } from './assign-words';

/** Everything that an assignment rests on, so that a later one is known to be of the same plan. */
const printOf = ({ plan, byRow, limits }: JudgedPlan): string =>
  JSON.stringify([[...byRow].map(([row, { channel }]) => [row, channel]), stockOf(plan), limits]);

interface Run {
  readonly controller: AbortController;
  readonly start: number;
  progress: AssignProgress;
}

/** Searching for an assignment and writing it. Draws nothing itself. */
export class AssignState {
  readonly form = new AssignForm();
  isOpen = false;
  running?: Run;
  found?: ScopedAssignment;
  /** Cells that writing would change. */
  cells = 0;
  written?: number;
  problem?: string;
  /** The last thing to be said aloud. */
  said = '';
  /** Lists shown longer than at first, by name. */
  readonly lengths = new Map<string, number>();
  readonly opened = new Set<string>();
  private freed: readonly Part[] = [];
  private print = '';
  private seen?: JudgedPlan;
  private isSame = false;

  constructor(
    readonly pane: PaneState,
    private readonly spreadsheet: Spreadsheet,
    private readonly assign: Assigner,
    private readonly changed: () => void,
    private readonly progressed: () => void,
    private readonly answered: () => void,
  ) {}

  get words(): AssignPaneWords {
    return ASSIGN_PANE_WORDS[this.pane.language];
  }

  get judged(): JudgedPlan | undefined {
    return this.pane.session.source.judged;
  }

  rowsOf(scope: AssignForm['scope']): readonly number[] {
    const { judged } = this;
    if (!judged) return [];
    return scope === 'all' ? [...judged.byRow.keys()] : this.pane.shownRows().filter((row) => judged.byRow.has(row));
  }

  /** True while the plan is what it was when the assignment was found. */
  get isCurrent(): boolean {
    const { judged } = this;
    if (judged !== this.seen) {
      this.seen = judged;
      this.isSame = judged !== undefined && printOf(judged) === this.print;
    }
    return this.isSame;
  }

  /** Another wish: what was found does not answer it. */
  ask(change: (form: AssignForm) => void): void {
    change(this.form);
    this.forget();
    this.changed();
  }

  /** A key was pressed in the form, which stays as it is: the field keeps its caret, and a press that ends typing counts. */
  typed(): void {
    this.forget();
    this.answered();
  }

  async search(): Promise<void> {
    const { judged, words } = this;
    if (!judged || this.running) return;
    this.forget();
    this.problem = this.form.complaint(words);
    if (this.problem) return this.changed();
    const controller = new AbortController();
    const run: Run = { controller, start: performance.now(), progress: { step: 'judging' } };
    this.running = run;
    this.changed();
    const clock = setInterval(this.progressed, 500);
    try {
      const options = { ...this.form.options, signal: controller.signal, onProgress: (progress: AssignProgress) => this.follow(run, progress) }; // prettier-ignore
      const rows = new Set(this.rowsOf(this.form.scope));
      const found = await assignRows(judged, rows, options, this.assign);
      if (this.running === run) this.keep(judged, found, options.free ?? []);
    } catch (error) {
      this.problem = words.broken(sentenceOf(error, this.pane.language));
    } finally {
      clearInterval(clock);
      this.running = undefined;
      this.changed();
    }
  }

  cancel(): void {
    this.running?.controller.abort();
  }

  /** Writes what was found as one action; the verdicts follow from the cells. */
  async write(): Promise<void> {
    const { found } = this;
    if (!found || !this.isCurrent || this.pane.busy || this.running) return;
    this.problem = undefined;
    const { source } = this.pane.session;
    const { language } = this.pane;
    await this.pane.write(async () => {
      try {
        const choice = { parts: this.partsHeld(), free: this.freed, language };
        this.written = await writeAssignment(this.spreadsheet, source, found, choice);
      } catch (error) {
        this.problem = sentenceOf(error, this.pane.language);
      }
    });
    if (this.written !== undefined && this.judged) this.said = this.writtenWords(this.written);
    this.changed();
  }

  writtenWords(cells: number): string {
    return this.words.written(this.pane.count(cells), cells === 1);
  }

  showMore(list: string, length: number): void {
    this.lengths.set(list, length);
    this.changed();
  }

  setOpened(key: string, isOpen: boolean): void {
    if (isOpen) this.opened.add(key);
    else this.opened.delete(key);
    this.changed();
  }

  /** Another workbook is open. */
  reset(): void {
    this.cancel();
    this.forget();
  }

  /** A page that is left gives the worker back. */
  dispose(): void {
    this.cancel();
  }

  private follow(run: Run, progress: AssignProgress): void {
    run.progress = progress;
    this.progressed();
  }

  private keep(judged: JudgedPlan, found: ScopedAssignment, free: readonly Part[]): void {
    const [first = ''] = outcomeWords(found, this.pane.language);
    this.said = first;
    if (found.status !== 'solved') return;
    this.found = found;
    this.freed = free;
    this.print = printOf(judged);
    this.seen = undefined;
    const edits = assignmentEdits(this.pane.session.source, found, { parts: this.partsHeld(), free });
    const changes = planChanges(this.pane.session.source, edits);
    this.cells = changes.reduce((sum, { cells }) => sum + cells.length, 0);
  }

  /** Parts that the list has a column for, on each of its sheets. */
  private partsHeld(): readonly Part[] {
    return PARTS.filter((part) => hasColumn(this.pane.session.source, part));
  }

  private forget(): void {
    this.found = this.problem = this.written = undefined;
    this.said = '';
    this.lengths.clear();
  }
}
