import type { Cell } from '../../functions/define';
import type { RangeAddress } from '../../workbook/port';
import type { WholeLook } from '../../workbook/whole-look';
import { holds } from './cell-reference';
import type { FormulaShape } from './formula-shape';

/** What a cell shall hold. Formulas are in stored form, without '='. */
export type CellInput =
  | { readonly kind: 'constant'; readonly value: number | string | boolean }
  | {
      readonly kind: 'formula';
      /** A shape when other rows have the same formula but for the number of the row. */
      readonly formula: string | FormulaShape;
      /** Undefined when it has not been computed yet. */
      readonly value: Cell | undefined;
      /** Size of the block that the formula fills; absent for one cell. */
      readonly spill?: { readonly rows: number; readonly columns: number };
    }
  /** A cell filled from the formula of another cell. */
  | { readonly kind: 'spilled'; readonly value: Cell };

export interface WriteEffect {
  readonly kind: 'write';
  readonly range: RangeAddress;
  /** Asked when the cell is written and only for cells of the range; undefined leaves the content, null empties it. */
  inputAt(row: number, column: number): CellInput | null | undefined;
  /** True when it fills cells from the formula of another cell. */
  readonly spills: boolean;
  /** About how much room the written cells take, in bytes. */
  readonly bytes: number;
}
export type Effect =
  | WriteEffect
  | { readonly kind: 'clear'; readonly range: RangeAddress }
  | { readonly kind: 'look'; readonly range: RangeAddress; readonly look: WholeLook };

/** What all effects together ask of one cell. An undefined input leaves the content, null empties it. */
export interface CellState {
  readonly input: CellInput | null | undefined;
  readonly resetStyle: boolean;
  readonly look: WholeLook | undefined;
}

/** What the effects ask of one column, the same for all rows that they touch together. */
export interface ColumnPlan extends Omit<CellState, 'input'> {
  /** Later ones first; those before a clearing are left out. */
  readonly writes: readonly WriteEffect[];
  /** Cell styles with the look laid over them, by the style below. */
  readonly styles: Map<number, number>;
}

function planColumn(effects: readonly Effect[], column: number): ColumnPlan | undefined {
  let writes: WriteEffect[] = [];
  let resetStyle = false;
  let look: WholeLook | undefined;
  let touched = false;
  for (const effect of effects) {
    const { range } = effect;
    if (column < range.column || column >= range.column + range.columns) continue;
    touched = true;
    if (effect.kind === 'look') look = look ? { ...look, ...effect.look } : effect.look;
    else if (effect.kind === 'clear') {
      writes = [];
      resetStyle = true;
      look = undefined;
    } else writes.unshift(effect);
  }
  return touched ? { writes, resetStyle, look, styles: new Map() } : undefined;
}

export function inputOf({ writes, resetStyle }: ColumnPlan, row: number, column: number): CellInput | null | undefined {
  for (const write of writes) {
    const asked = write.inputAt(row, column);
    if (asked !== undefined) return asked;
  }
  return resetStyle ? null : undefined;
}

export function resolve(effects: readonly Effect[], row: number, column: number): CellState | undefined {
  const plan = planColumn(
    effects.filter(({ range }) => holds(range, row, column)),
    column,
  );
  return plan && { input: inputOf(plan, row, column), resetStyle: plan.resetStyle, look: plan.look };
}

/** The effects that touch a row, by column; rows touched by the same effects share one. */
export class RowPlan {
  /** Columns in which something is put, in order. */
  readonly columns: readonly number[];
  private readonly plans = new Map<number, ColumnPlan | undefined>();

  constructor(private readonly effects: readonly Effect[]) {
    this.columns = filledColumns(effects);
  }

  at(column: number): ColumnPlan | undefined {
    const known = this.plans.get(column);
    if (known !== undefined || this.plans.has(column)) return known;
    const plan = planColumn(this.effects, column);
    this.plans.set(column, plan);
    return plan;
  }
}

/** The effects that touch a row, cheap to ask for row after row downwards. */
export class EffectSweep {
  private readonly byRow: readonly { effect: Effect; order: number }[];
  private active: { effect: Effect; order: number }[] = [];
  private cached = new RowPlan([]);
  private next = 0;
  private at = -1;

  constructor(readonly effects: readonly Effect[]) {
    this.byRow = effects
      .map((effect, order) => ({ effect, order }))
      .sort((a, b) => a.effect.range.row - b.effect.range.row || a.order - b.order);
  }

  touching(row: number): RowPlan {
    if (row === this.at) return this.cached;
    if (row < this.at) {
      this.active = [];
      this.next = 0;
    }
    this.at = row;
    const before = this.active.length;
    const next = this.next;
    this.active = this.active.filter(({ effect }) => effect.range.row + effect.range.rows > row);
    while ((this.byRow[this.next]?.effect.range.row ?? Infinity) <= row) {
      const entry = this.byRow[this.next++]!;
      if (entry.effect.range.row + entry.effect.range.rows > row) this.active.push(entry);
    }
    if (this.active.length !== before || this.next !== next) {
      this.active.sort((a, b) => a.order - b.order);
      this.cached = new RowPlan(this.active.map(({ effect }) => effect));
    }
    return this.cached;
  }

  /** Rows that must exist afterwards, in order. */
  rows(): number[] {
    const rows = new Set<number>();
    for (const { kind, range } of this.effects)
      if (kind !== 'clear') for (let r = range.row; r < range.row + range.rows; r++) rows.add(r);
    return [...rows].sort((a, b) => a - b);
  }
}

/** Columns in which the effects put something into a row, in order. */
function filledColumns(effects: readonly Effect[]): number[] {
  const columns = new Set<number>();
  for (const { kind, range } of effects)
    if (kind !== 'clear') for (let c = range.column; c < range.column + range.columns; c++) columns.add(c);
  return [...columns].sort((a, b) => a - b);
}
