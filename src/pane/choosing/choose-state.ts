import type { Part } from '../../plan/choosing/candidate';
import { withoutType } from '../../plan/choosing/rank-several';
import { rankingSteps, type Candidate } from '../../plan/choosing/rank';
import { inOrder, type CandidateOrder } from '../../plan/choosing/rank-order';
import type { Channel, SensorType } from '../../plan/model';
import type { WaysOut } from '../../plan/choosing/relax';
import { stockIn, waysOutForRow } from '../../workbook/choosing/choose';
import type { PlanSession } from '../../workbook/session';

export type Target = 'row' | 'part' | 'shown' | 'selected';

export const FILTERS = ['technology', 'output', 'axes'] as const;
export type Filter = (typeof FILTERS)[number];

const filterWord = (sensor: SensorType, filter: Filter): string => String(sensor[filter] ?? '').trim();

/** Ranking types for a row, or for several that are chosen together. Draws nothing itself. */
export class ChooseState {
  target: Target = 'row';
  readonly free = new Set<Part>(['mount', 'cable', 'input']);
  candidates?: readonly Candidate[];
  ways?: WaysOut;
  /** Sheet rows for which the candidates were ranked, and their channels in the same order. */
  ranked: readonly number[] = [];
  channels: readonly Channel[] = [];
  order: CandidateOrder = 'margin';
  /** Shown are only types with this word; blank for all. */
  readonly filters: Record<Filter, string> = { technology: '', output: '', axes: '' };
  /** Nothing of the list is selected in the sheet. */
  hasNoRows = false;
  isBusy = false;
  isLong = false;
  hasPlots = false;

  constructor(
    private readonly session: PlanSession,
    readonly row: number,
    private readonly shownRows: () => readonly number[],
    private readonly changed: () => void,
  ) {}

  get part(): string {
    return this.session.source.judged?.byRow.get(this.row)?.channel.group?.trim() ?? '';
  }

  rowsOf(target: Target): readonly number[] {
    const { judged } = this.session.source;
    if (!judged || target === 'row' || target === 'selected') return [this.row];
    if (target === 'shown') return this.shownRows().filter((row) => judged.byRow.has(row));
    return [...judged.byRow]
      .filter(([, { channel }]) => (channel.group?.trim() ?? '') === this.part)
      .map(([row]) => row);
  }

  /** The candidates that are asked for, in the order that is asked for. */
  get listed(): readonly Candidate[] {
    const wanted = (this.candidates ?? []).filter(({ sensor }) =>
      FILTERS.every((filter) => this.filters[filter] === '' || filterWord(sensor, filter) === this.filters[filter]),
    );
    return inOrder(wanted, this.order);
  }

  /** What the candidates may be filtered by. */
  wordsOf(filter: Filter): readonly string[] {
    return [...new Set((this.candidates ?? []).map(({ sensor }) => filterWord(sensor, filter)))].filter(Boolean).sort();
  }

  setOrder(order: CandidateOrder): void {
    this.order = order;
    this.changed();
  }

  setFilter(filter: Filter, word: string): void {
    this.filters[filter] = word;
    this.changed();
  }

  setTarget(target: Target): void {
    this.target = target;
    this.forget();
  }

  setFree(part: Part, isFree: boolean): void {
    if (isFree) this.free.add(part);
    else this.free.delete(part);
    this.forget();
  }

  /** Ranks in steps, with a turn for the page before each. */
  async rank(turn: () => Promise<void>): Promise<void> {
    const { judged } = this.session.source;
    if (this.isBusy || !judged) return;
    this.isBusy = true;
    this.forget();
    try {
      const rows = this.target === 'selected' ? await this.session.selectedRows() : this.rowsOf(this.target);
      this.hasNoRows = rows.length === 0;
      if (this.hasNoRows) return;
      this.ranked = rows;
      this.channels = rows.map((row) => judged.byRow.get(row)!.channel);
      const free = [...this.free];
      const steps = rankingSteps(this.channels, stockIn(judged), judged.limits, { free });
      for (let isDone = false; !isDone;) {
        await turn();
        const step = steps.next();
        isDone = step.done === true;
        if (step.done) this.candidates = step.value.candidates;
      }
      const [open] = withoutType(this.candidates ?? []);
      if (open !== undefined) {
        await turn();
        this.ways = waysOutForRow(judged, rows[open]!, { free });
      }
    } finally {
      this.isBusy = false;
      this.changed();
    }
  }

  showAll(): void {
    this.isLong = true;
    this.changed();
  }

  showPlots(): void {
    this.hasPlots = !this.hasPlots;
    this.changed();
  }

  private forget(): void {
    this.candidates = undefined;
    this.ways = undefined;
    this.hasNoRows = false;
    for (const filter of FILTERS) this.filters[filter] = '';
    this.isLong = false;
    this.hasPlots = false;
    this.changed();
  }
}
