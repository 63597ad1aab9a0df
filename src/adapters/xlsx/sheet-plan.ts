import { cellAddress } from '../../workbook/address';
import type { Drawing } from '../../workbook/drawings';
import type { MarkRule, RangeAddress } from '../../workbook/port';
import { cellEffects, checkPlace, rowsEffect, type FileChange } from './changes';
import type { FormulaNames } from './formula-names';
import { CELL_TEXT } from './limits';
import type { NoteEdits } from './notes-edit';
import { refuse } from './refuse';
import type { Effect } from './sheet-effects';
import type { WidthEdit } from './sheet-sections';
import type { SheetEntry } from './workbook-part';

/** Notes as they come together. */
interface NotesPlan extends NoteEdits {
  readonly texts: Map<string, string | null>;
  readonly theirs: Set<string>;
  readonly cleared: RangeAddress[];
}

/** All changes of one action to one sheet. */
export interface SheetPlan {
  readonly sheet: SheetEntry;
  readonly effects: Effect[];
  readonly widths: WidthEdit[];
  marks: readonly MarkRule[] | undefined;
  notes: NotesPlan | undefined;
  drawings: readonly Drawing[] | undefined;
  /** Rows whose height follows their texts. */
  readonly fits: Pick<RangeAddress, 'row' | 'rows'>[];
  /** Columns that tables take in, by table name. */
  readonly tableColumns: Map<string, number>;
}

export function planChanges(
  changes: readonly FileChange[],
  find: (name: string) => SheetEntry,
  names: FormulaNames,
): readonly SheetPlan[] {
  const plans = new Map<string, SheetPlan>();
  const planOf = (name: string): SheetPlan => {
    const sheet = find(name);
    let plan = plans.get(sheet.part);
    if (!plan) {
      plan = { sheet, effects: [], widths: [], marks: undefined, notes: undefined, drawings: undefined, fits: [], tableColumns: new Map() }; // prettier-ignore
      plans.set(sheet.part, plan);
    }
    return plan;
  };
  for (const change of changes) if (change.kind !== 'sheet') addChange(planOf(change.sheet), change, names);
  return [...plans.values()];
}

function addChange(plan: SheetPlan, change: Exclude<FileChange, { kind: 'sheet' }>, names: FormulaNames): void {
  switch (change.kind) {
    case 'cells':
      for (const effect of cellEffects(change, names)) plan.effects.push(effect);
      return;
    case 'rows':
      return void plan.effects.push(rowsEffect(change, names));
    case 'look':
      checkPlace(change.sheet, change.range);
      return void plan.effects.push({ kind: 'look', range: change.range, look: change.look });
    case 'clear':
      checkPlace(change.sheet, change.range);
      plan.effects.push({ kind: 'clear', range: change.range });
      return void notesOf(plan).cleared.push(change.range);
    case 'width':
      checkPlace(change.sheet, { row: 0, rows: 1, column: change.column, columns: change.columns });
      return void plan.widths.push(change);
    case 'drawings':
      plan.drawings = change.drawings;
      return;
    case 'fit':
      return void plan.fits.push(change);
    case 'marks':
      change.rules.forEach(({ range }) => checkPlace(change.sheet, range));
      plan.marks = change.rules;
      return;
    case 'note': {
      const cell = cellAddress(change.row, change.column);
      checkPlace(change.sheet, { row: change.row, column: change.column, rows: 1, columns: 1 });
      if ((change.text?.length ?? 0) > CELL_TEXT)
        refuse('too-large', `The note for cell ${cell} has more than ${CELL_TEXT} characters.`);
      if (change.isOurs === false) notesOf(plan).theirs.add(cell);
      return void notesOf(plan).texts.set(cell, change.text);
    }
    case 'extend-table':
      return void plan.tableColumns.set(change.table, (plan.tableColumns.get(change.table) ?? 0) + change.columns);
  }
}

function notesOf(plan: SheetPlan): NotesPlan {
  return (plan.notes ??= { texts: new Map(), theirs: new Set(), cleared: [] });
}
