import type { Language } from '../../core/language';
import type { FileChange, FileRowsChange } from '../../adapters/xlsx/changes';
import { editWithNotes } from '../../adapters/xlsx/notes-around';
import type { WorkbookFile } from '../../adapters/xlsx/workbook-file';
import { isCellError, type Cell } from '../../functions/define';
import { cellAddress } from '../../workbook/address';
import { clearVerdicts, MOST_NOTES, noteChanges } from '../../workbook/annotate';
import { listRowOf, onList, tablesOfEachList } from '../../workbook/channel-lists';
import { changesWith, placeOwnBlock, refuseOccupied } from '../../workbook/check';
import { dittosOf } from '../../workbook/dittos';
import { rowFormulas, rowWriter } from '../../workbook/formulas';
import { mappingJson } from '../../workbook/mapping';
import { OWN_COLUMNS, ownIndex } from '../../workbook/own-columns';
import { HostProblem } from '../../workbook/port';
import { ROW_NUMBER, type PlanTables } from '../../workbook/row-sources';
import { rowValues } from '../../workbook/row-values';
import { MAPPING_SETTING } from '../../workbook/session';
import { inert, SUMMARY_SETTING, summaryPage, summarySheetName, usedRange } from '../../workbook/summary';
import type { Mapping } from '../../workbook/tables';
import { reportContent } from '../../workbook/report/content';
import { checksOf, listNames, placeOfRow, type WorkbookPlan, notesOf } from './workbook-plan';

const MOST_TOLD = 5;

/** True for a workbook that this command wrote: such a copy may be replaced by a newer one. */
export const isCheckedCopy = (file: WorkbookFile): boolean => file.getSetting(SUMMARY_SETTING) !== undefined;

/**
 * Writes our columns with their values, notes and the summary into the workbook in memory. Returns what to tell.
 *
 * The stored values come from the row formulas themselves, worked out by the same function calls that a spreadsheet
 * makes (row-values.ts). A spreadsheet engine would need a second save and load of the file and a hundred times as long
 * for long lists; that both give the same values is held by a test.
 */
export const writePlan = (
  plan: WorkbookPlan,
  options: { readonly mapping?: Mapping; readonly asValues: boolean; readonly language: Language },
): { readonly file: WorkbookFile; readonly told: readonly string[] } => {
  const { mapping, language } = options;
  const lists = tablesOfEachList(plan.tables).map((tables, list) => blockOf(plan, tables, list, options));
  const told = disagreements(plan, (id) => {
    const { list, row } = listRowOf(plan.tables, id)!;
    return lists[list]!.values(row)[ownIndex('verdict')] ?? null;
  });
  const { file } = plan;
  fillSummary(plan, told, language);
  const notes = lists.flatMap((block) => block.notes);
  const kept = editWithNotes(
    file,
    lists.flatMap((block) => block.changes),
    notes,
  );
  const said = plan.said ?? mapping;
  if (said) file.setSetting(MAPPING_SETTING, mappingJson(said));
  if (lists.some((block) => block.notes.length === MOST_NOTES))
    told.push(`Notes stand on the ${MOST_NOTES} worst rows only; the column Reason says why for every row.`);
  if (kept.length > 0)
    told.push(`${listed(kept)}: somebody's note stands there and was left; ours was not written beside it.`);
  const others = lists.flatMap((block) => block.others);
  if (others.length > 0)
    told.push(`${listed(others)}: a column of yours with a heading like one of ours; it was left as it is.`);
  const stale = file.dependents();
  if (stale.length > 0)
    told.push(
      `${listed(stale)}: formulas of yours read cells that changed; open the workbook in a spreadsheet program to renew their values.`,
    );
  for (const { channels, column } of lists) {
    const unseen = file.notPrinted(channels.sheet, {
      row: channels.headerRow,
      column,
      rows: channels.lastRow - channels.headerRow + 1,
      columns: OWN_COLUMNS.filter(({ kind }) => kind !== 'working').length,
    });
    if (unseen) told.push(unseen);
  }
  return { file, told: [...told, ...file.warnings] };
};

/** All that is written beside one of the lists. */
const blockOf = (
  plan: WorkbookPlan,
  tables: PlanTables,
  list: number,
  { asValues, language }: { readonly asValues: boolean; readonly language: Language },
) => {
  const { contentOf, judged } = plan;
  const { channels } = tables;
  const content = contentOf(channels.sheet);
  refuseOccupied(tables, content);
  const { column, headingRow, others } = placeOwnBlock(tables, content);
  const values = once(rowValues(tables, column, contentOf));
  const verdictColumn = column + ownIndex('verdict');
  const rows = rowsOf({ tables, contentOf }, column, values, asValues);
  return {
    channels,
    column,
    values,
    changes: [clearVerdicts(channels, verdictColumn), ...changesWith<FileChange>(tables, content, rows)],
    notes: noteChanges(channels, verdictColumn, { ...judged, byRow: onList(judged.byRow, list) }, language),
    others: others.map((c) => `${channels.sheet}!${cellAddress(headingRow, c)}`),
  };
};

/** Fills the summary sheet; it is told where none may be added. */
const fillSummary = (plan: WorkbookPlan, told: string[], language: Language): void => {
  const { file, judged } = plan;
  const names = file.sheets.map(({ name }) => name);
  const summary = summarySheetName(names, file.getSetting(SUMMARY_SETTING));
  try {
    const before = names.includes(summary) ? usedRange(file.readSheet(summary)) : undefined;
    const reported = { checks: [...judged.byRow.values()], limits: judged.limits, unread: plan.unreadIn(language) };
    const content = reportContent(reported, listNames(plan), { language, notes: notesOf(plan) });
    file.edit(summaryPage(summary, content, before, language));
    file.setSetting(SUMMARY_SETTING, JSON.stringify(summary));
  } catch (error) {
    if (!(error instanceof HostProblem) || error.code !== 'protected') throw error;
    told.push(`${error.message} The channel list was checked without it.`);
    file.setSetting(SUMMARY_SETTING, 'null');
  }
};

const listed = (places: readonly string[]): string =>
  places.length <= MOST_TOLD
    ? places.join(', ')
    : `${places.slice(0, MOST_TOLD).join(', ')} and ${places.length - MOST_TOLD} more`;

/** Each row is worked out once. */
const once = <T>(work: (row: number) => T): ((row: number) => T) => {
  const known = new Map<number, T>();
  return (row) => {
    if (!known.has(row)) known.set(row, work(row));
    return known.get(row) as T;
  };
};

/** Formulas with the value they have; or, for readers without the add-in, the values alone. */
const rowsOf = (
  { tables, contentOf }: { readonly tables: PlanTables; readonly contentOf: WorkbookPlan['contentOf'] },
  column: number,
  values: (row: number) => readonly Cell[],
  asValues: boolean,
): FileChange[] => {
  const { sheet, firstRow, lastRow, skippedRows } = tables.channels;
  const skipped = new Set(skippedRows);
  const run = (from: number, to: number): FileRowsChange => ({
    kind: 'rows',
    sheet,
    row: from,
    column,
    rows: to - from,
    columns: OWN_COLUMNS.length,
    ...(asValues ? {} : { formulas: { texts: rowFormulas(tables, column), rowMark: ROW_NUMBER } }),
    valuesOf: (row) =>
      skipped.has(row)
        ? undefined
        : asValues
          ? values(row).map((value) => (isCellError(value) ? null : inert(value)))
          : values(row),
  });
  if (asValues) return [run(firstRow, lastRow + 1)];
  const dittos = dittosOf(tables.channels, contentOf(sheet));
  const write = rowWriter(tables, column, dittos);
  const changes: FileChange[] = [];
  let from = firstRow;
  for (const row of [...dittos.keys()].sort((a, b) => a - b)) {
    if (row > from) changes.push(run(from, row));
    const known = values(row);
    const cells = [write(row).map((formula, i) => ({ formula, value: known[i] ?? null }))];
    changes.push({ kind: 'cells', sheet, row, column, cells });
    from = row + 1;
  }
  return from > lastRow ? changes : [...changes, run(from, lastRow + 1)];
};

/** The cells judge a row by what they say, the plan by what it could read; where they part, a person must look. */
const disagreements = (plan: WorkbookPlan, verdictOf: (row: number) => Cell): string[] =>
  checksOf(plan).flatMap(([row, { verdict }]) => {
    const shown = verdictOf(row);
    return shown === verdict
      ? []
      : [`${placeOfRow(plan, row)}: the cells say ${String(shown)}, the plan as a whole ${verdict}; look at this row.`];
  });
