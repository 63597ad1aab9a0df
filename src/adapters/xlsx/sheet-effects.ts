import type { Cell } from '../../functions/define';
import type { CellLook, RangeAddress } from '../../workbook/port';
import { holds } from './cell-reference';

/** What a cell shall hold. Formulas are in stored form, without '='. */
export type CellInput =
  | { readonly kind: 'constant'; readonly value: number | string | boolean }
  | {
      readonly kind: 'formula';
      readonly formula: string;
      /** Undefined when it has not been computed yet. */
      readonly value: Cell | undefined;
      /** Size of the block that the formula fills; absent for one cell. */
      readonly spill?: { readonly rows: number; readonly columns: number };
    }
  /** A cell filled from the formula of another cell. */
  | { readonly kind: 'spilled'; readonly value: Cell };

export type Effect = { readonly range: RangeAddress } & (
  | { readonly kind: 'write'; readonly cells: readonly (readonly (CellInput | null | undefined)[])[] }
  | { readonly kind: 'clear' }
  | { readonly kind: 'look'; readonly look: CellLook }
);

/** What all effects together ask of one cell. An undefined input leaves the content, null empties it. */
export interface CellState {
  readonly input: CellInput | null | undefined;
  readonly resetStyle: boolean;
  readonly look: CellLook | undefined;
}

export function resolve(effects: readonly Effect[], row: number, column: number): CellState | undefined {
  let input: CellInput | null | undefined;
  let resetStyle = false;
  let look: CellLook | undefined;
  let touched = false;
  for (const effect of effects) {
    if (!holds(effect.range, row, column)) continue;
    touched = true;
    if (effect.kind === 'look') look = look ? { ...look, ...effect.look } : effect.look;
    else if (effect.kind === 'clear') {
      input = null;
      resetStyle = true;
      look = undefined;
    } else {
      const asked = effect.cells[row - effect.range.row]?.[column - effect.range.column];
      if (asked !== undefined) input = asked;
    }
  }
  return touched ? { input, resetStyle, look } : undefined;
}

/** The effects that touch a row, cheap to ask for row after row downwards. */
export class EffectSweep {
  private readonly byRow: readonly { effect: Effect; order: number }[];
  private active: { effect: Effect; order: number }[] = [];
  private cached: readonly Effect[] = [];
  private next = 0;
  private at = -1;

  constructor(readonly effects: readonly Effect[]) {
    this.byRow = effects
      .map((effect, order) => ({ effect, order }))
      .sort((a, b) => a.effect.range.row - b.effect.range.row || a.order - b.order);
  }

  touching(row: number): readonly Effect[] {
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
      this.cached = this.active.map(({ effect }) => effect);
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
export function filledColumns(effects: readonly Effect[]): number[] {
  const columns = new Set<number>();
  for (const { kind, range } of effects)
    if (kind !== 'clear') for (let c = range.column; c < range.column + range.columns; c++) columns.add(c);
  return [...columns].sort((a, b) => a - b);
}
