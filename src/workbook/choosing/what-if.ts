import { fieldByKey } from '../../plan/fields';
import { compareChecks, type Comparison } from '../../plan/choosing/what-if';
import { judgePlan, type JudgedPlan } from '../plan-of';
import type { SheetContent, Spreadsheet } from '../port';
import type { RecognisedTables } from '../recognise';
import { SheetCells } from '../sheet-cells';
import type { ColumnUse, RecognisedTable } from '../tables';
import { EDIT_WORDS } from './row-edit-words';
import { refusalsOf, writeEdits, type RowEdit, type WriteOptions } from './row-edits';

/** A workbook as it was read. */
export interface PlanSource {
  readonly tables: RecognisedTables;
  readonly contentOf: (sheet: string) => SheetContent;
}

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
  { tables, contentOf }: PlanSource,
  edits: readonly RowEdit[],
  { language }: Pick<WriteOptions, 'language'> = {},
): TriedChange | undefined => {
  const { channels } = tables;
  if (!channels) return undefined;
  const content = contentOf(channels.sheet);
  const before = judgePlan(tables, contentOf);
  const overlaid = overlay(channels, content, edits);
  const after = judgePlan({ ...tables, channels: overlaid.table }, (sheet) =>
    sheet === channels.sheet ? overlaid.content : contentOf(sheet),
  );
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
    refusals: refusalsOf(channels, content, edits, language),
  };
};

/** Writes the changed cells, and only those, as one action that one undo takes back. Rejects with a HostProblem. */
export const keepChange = (
  spreadsheet: Spreadsheet,
  { tables, contentOf }: PlanSource,
  { edits }: Pick<TriedChange, 'edits'>,
  options: WriteOptions = {},
): Promise<number> => {
  const { channels } = tables;
  if (!channels) return Promise.resolve(0);
  const label = EDIT_WORDS[options.language ?? 'en'].keepChange;
  return writeEdits(spreadsheet, channels, contentOf(channels.sheet), edits, label, options);
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
