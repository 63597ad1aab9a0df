import { namesIn, typedValue, TRIABLE } from '../../workbook/choosing/tried-value';
import type { TriedChange } from '../../workbook/choosing/what-if';
import type { RowEdit } from '../../workbook/choosing/row-edits';
import type { PlanSession } from '../../workbook/session';

export type TryTarget = 'all' | 'shown' | 'selected';

/** One thing that is tried: a field of these rows gets this value. */
export interface Trial {
  readonly key: string;
  readonly value: RowEdit['value'];
  /** 0-based rows of the sheet. */
  readonly rows: readonly number[];
}

/** What would happen if cells held other values; nothing is written before it is kept. Draws nothing itself. */
export class TryState {
  target: TryTarget = 'shown';
  key: string = TRIABLE[0];
  text = '';
  trials: readonly Trial[] = [];
  outcome?: TriedChange;
  /** Why what was typed could not be tried. */
  problem?: 'no rows' | { readonly expected: string };
  isLong = false;

  constructor(
    private readonly session: PlanSession,
    private readonly shownRows: () => readonly number[],
    private readonly changed: () => void,
  ) {}

  /** Fields that the list has a column for. */
  get keys(): readonly string[] {
    const columns = this.session.source.tables.channels?.columns;
    return TRIABLE.filter((key) => columns?.has(key));
  }

  /** Names that the lists give for this field; empty where it is no name. */
  get names(): readonly string[] {
    const { judged } = this.session.source;
    return judged ? namesIn(judged.plan, this.key) : [];
  }

  get allRows(): readonly number[] {
    return [...(this.session.source.judged?.byRow.keys() ?? [])];
  }

  rowsShown(): readonly number[] {
    const known = new Set(this.allRows);
    return this.shownRows().filter((row) => known.has(row));
  }

  setTarget(target: TryTarget): void {
    this.target = target;
    this.problem = undefined;
    this.changed();
  }

  setKey(key: string): void {
    this.key = key;
    this.text = '';
    this.problem = undefined;
    this.changed();
  }

  /** Adds what was typed to what is tried, and judges the plan with all of it. */
  async add(turn: () => Promise<void>): Promise<void> {
    const { channels } = this.session.source.tables;
    if (!channels) return;
    const rows = await this.rowsOf(this.target);
    const typed = typedValue(channels, this.key, this.text);
    this.problem = rows.length === 0 ? 'no rows' : typed.ok ? undefined : { expected: typed.expected };
    if (this.problem || !typed.ok) return this.changed();
    const isCovered = (trial: Trial) => trial.key === this.key && trial.rows.every((row) => rows.includes(row));
    this.trials = [...this.trials.filter((trial) => !isCovered(trial)), { key: this.key, value: typed.value, rows }];
    await this.judge(turn);
  }

  async remove(trial: Trial, turn: () => Promise<void>): Promise<void> {
    this.trials = this.trials.filter((other) => other !== trial);
    await this.judge(turn);
  }

  drop(): void {
    this.trials = [];
    this.outcome = undefined;
    this.isLong = false;
    this.changed();
  }

  /** The list was read again: what was worked out may not hold any more. */
  stale(): void {
    this.outcome = undefined;
  }

  async judge(turn: () => Promise<void>): Promise<void> {
    this.isLong = false;
    await turn();
    this.outcome = this.trials.length > 0 ? this.session.tryEdits(this.edits()) : undefined;
    this.changed();
  }

  showAll(): void {
    this.isLong = true;
    this.changed();
  }

  /** A later trial of the same cell wins. */
  private edits(): readonly RowEdit[] {
    const byCell = new Map<string, RowEdit>();
    for (const { key, value, rows } of this.trials)
      for (const row of rows) byCell.set(`${row} ${key}`, { row, key, value });
    return [...byCell.values()];
  }

  private async rowsOf(target: TryTarget): Promise<readonly number[]> {
    if (target === 'all') return this.allRows;
    return target === 'shown' ? this.rowsShown() : this.session.selectedRows();
  }
}
