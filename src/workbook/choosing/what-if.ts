import { fieldByKey } from '../../plan/fields';
import { compareChecks, type Comparison } from '../../plan/choosing/what-if';
import { byList, channelLists } from '../channel-lists';
import { judgePlan, type JudgedPlan } from '../plan-of';
import type { SheetContent, Spreadsheet } from '../port';
import { SheetCells } from '../sheet-cells';
import type { ColumnUse, RecognisedTable } from '../tables';
import { EDIT_WORDS } from './row-edit-words';
import { planRefusals, writeEdits, type PlanSource, type RowEdit, type WriteOptions } from './row-edits';

export type { PlanSource } from './row-edits';

/** What a change would do. Nothing is written; to drop it is to forget it. */
export interface TriedChange {
  readonly edits: readonly RowEdit[];
  readonly comparison: Comparison;
  /** 0-based sheet row of each channel of the comparison. */
  readonly rows: readonly number[];
  /** The plan as it would be. */
  readonly after: JudgedPlan;
  /** Why it could not be kept, in sentences; empty when it can. */
  readonly refusals: readonly string[];
}

/**
 * Judges the plan as if the cells held these values. Other cells whose formulas read them keep their values here: they
 * are only worked out again when the change is kept. Undefined when there is no channel list.
 */
export const tryChange = (
  source: PlanSource,
  edits: readonly RowEdit[],
  { language }: Pick<WriteOptions, 'language'> = {},
): TriedChange | undefined => {
  const { tables, contentOf } = source;
  if (!tables.channels) return undefined;
  const before = judgePlan(tables, contentOf);
  const { channels, contents } = overlaid(source, edits);
  const after = judgePlan({ ...tables, channels }, (sheet) => contents.get(sheet) ?? contentOf(sheet));
  const rows = [...before.byRow.keys()];
  const checks = rows.map((row) => before.byRow.get(row)!);
  return {
    edits,
    rows,
    comparison: compareChecks(
      checks,
      rows.map((row, i) => after.byRow.get(row) ?? checks[i]!),
      before.limits,
      after.limits,
    ),
    after,
    refusals: planRefusals(source, edits, language),
  };
};

/** Writes the changed cells, and only those, as one action that one undo takes back. Rejects with a HostProblem. */
export const keepChange = (
  spreadsheet: Spreadsheet,
  source: PlanSource,
  { edits }: Pick<TriedChange, 'edits'>,
  options: WriteOptions = {},
): Promise<number> => {
  const label = EDIT_WORDS[options.language ?? 'en'].keepChange;
  return writeEdits(spreadsheet, source, edits, label, options);
};

/** The channel list with the new values, on each sheet that has some. */
const overlaid = ({ tables, contentOf }: PlanSource, edits: readonly RowEdit[]) => {
  const contents = new Map<string, SheetContent>();
  const lists = [...channelLists(tables)];
  for (const { list, table, items } of byList(tables, edits)) {
    const laid = overlay(table, contentOf(table.sheet), items);
    contents.set(table.sheet, laid.content);
    lists[list] = laid.table;
  }
  const [first, ...parts] = lists;
  return { channels: first && parts.length > 0 ? { ...first, parts } : first, contents };
};

/** The list with the new values in its cells; a field without a column gets one beyond the sheet. */
const overlay = (
  table: RecognisedTable,
  content: SheetContent,
  edits: readonly RowEdit[],
): { readonly table: RecognisedTable; readonly content: SheetContent } => {
  const columns = new Map<string, ColumnUse>(table.columns);
  let free = new SheetCells(content).endColumn;
  const values = [...content.values];
  const copied = new Set<number>();
  for (const { row, key, value } of edits) {
    let use = columns.get(key);
    if (!use) {
      const { title, unit } = fieldByKey('channels', key);
      use = { column: free++, heading: title, unit, confidence: 1, evidence: '', alternatives: [] };
      columns.set(key, use);
    }
    const at = row - content.row;
    if (!copied.has(at)) values[at] = [...(values[at] ?? [])];
    copied.add(at);
    const cells = values[at] as (RowEdit['value'] | SheetContent['values'][number][number])[];
    while (cells.length < use.column - content.column) cells.push(null);
    cells[use.column - content.column] = value;
  }
  return { table: { ...table, columns }, content: { ...content, values } };
};
