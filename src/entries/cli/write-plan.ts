import type { FileChange } from '../../adapters/xlsx/changes';
import type { WorkbookFile } from '../../adapters/xlsx/workbook-file';
import type { Cell } from '../../functions/define';
import { NAMESPACE } from '../../functions/index';
import { cellAddress } from '../../workbook/address';
import { noteChanges } from '../../workbook/annotate';
import { checkChanges, placeOwnBlock } from '../../workbook/check';
import { mappingJson } from '../../workbook/mapping';
import { OWN_COLUMNS, ownIndex } from '../../workbook/own-columns';
import { HostProblem, type Change } from '../../workbook/port';
import { rowValues } from '../../workbook/row-values';
import { MAPPING_SETTING } from '../../workbook/session';
import { SUMMARY_SHEET, summaryChanges } from '../../workbook/summary';
import type { Mapping } from '../../workbook/tables';
import { checksOf, placeOfRow, type WorkbookPlan } from './workbook-plan';

/** Remembers which sheet is our summary, so that one of the user's with that name is never taken for it. */
const SUMMARY_SETTING = 'channelwright.summary';
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
export const writePlan = (plan: WorkbookPlan, mapping: Mapping | undefined): readonly string[] => {
  const { file, tables, contentOf, judged } = plan;
  const { channels } = tables;
  const content = contentOf(channels.sheet);
  const { column } = placeOwnBlock(tables, content);
  const values = rowValues(tables, column, contentOf);
  const valued = checkChanges(tables, content).map((change) =>
    change.kind === 'cells' && change.row === channels.firstRow ? withValues(change, values) : change,
  );
  const told = disagreements(plan, valued, column);
  const summary = summarySheet(file);
  const previous = file.sheets.some(({ name }) => name === summary) ? usedRange(file, summary) : undefined;
  const notes = noteChanges(channels, column + ownIndex('verdict'), judged);
  const kept = editAround(file, [...valued, ...summaryChanges(summary, channels.sheet, judged, previous)], notes);
  file.setSetting(SUMMARY_SETTING, JSON.stringify(summary));
  if (mapping) file.setSetting(MAPPING_SETTING, mappingJson(mapping));
  if (kept.length > 0)
    told.push(`${listed(kept)}: somebody's note stands there and was left; ours was not written beside it.`);
  const stale = file.dependents();
  if (stale.length > 0)
    told.push(
      `${listed(stale)}: formulas of yours read cells that changed; open the workbook in a spreadsheet program to renew their values.`,
    );
  return [...told, ...file.warnings];
};

const listed = (places: readonly string[]): string =>
  places.length <= MOST_TOLD
    ? places.join(', ')
    : `${places.slice(0, MOST_TOLD).join(', ')} and ${places.length - MOST_TOLD} more`;

type Cells = Extract<Change, { kind: 'cells' }>;

const withValues = (change: Cells, valuesOf: (row: number) => readonly Cell[]): FileChange => ({
  ...change,
  cells: change.cells.map((line, i) => {
    if (line[0] === null) return line;
    const values = valuesOf(change.row + i);
    return line.map((formula, c) => ({ formula: String(formula), value: values[c] }));
  }),
});

/** The cells judge a row by what they say, the plan by what it could read; where they part, a person must look. */
const disagreements = (plan: WorkbookPlan, changes: readonly FileChange[], column: number): string[] => {
  const { firstRow } = plan.tables.channels;
  const block = changes.find((c) => c.kind === 'cells' && c.row === firstRow && c.column === column);
  if (block?.kind !== 'cells') return [];
  return checksOf(plan).flatMap(([row, { verdict }]) => {
    const cell = block.cells[row - firstRow]?.[ownIndex('verdict')];
    const shown = typeof cell === 'object' && cell !== null ? cell.value : cell;
    return shown === verdict
      ? []
      : [`${placeOfRow(plan, row)}: the cells say ${String(shown)}, the plan as a whole ${verdict}; look at this row.`];
  });
};

/** The name of our summary sheet: the one used before, or the first free one. */
const summarySheet = (file: WorkbookFile): string => {
  const before = storedName(file.getSetting(SUMMARY_SETTING));
  const taken = new Set(file.sheets.map(({ name }) => name.toLowerCase()));
  if (before !== undefined && before.startsWith(SUMMARY_SHEET)) return before;
  for (let n = 1; ; n++) {
    const name = n === 1 ? SUMMARY_SHEET : `${SUMMARY_SHEET} ${n}`;
    if (!taken.has(name.toLowerCase())) return name;
  }
};

const storedName = (json: string | undefined): string | undefined => {
  try {
    const name: unknown = JSON.parse(json ?? 'null');
    return typeof name === 'string' ? name : undefined;
  } catch {
    return undefined;
  }
};

const usedRange = (file: WorkbookFile, sheet: string) => {
  const { row, column, values } = file.readSheet(sheet);
  const columns = values.reduce((most, line) => Math.max(most, line.length), 0);
  return columns === 0 ? undefined : { row: 0, column: 0, rows: row + values.length + 1, columns: column + columns };
};

type Note = Extract<Change, { kind: 'note' }>;

/** Makes all changes at once; notes that would stand in place of somebody else's are found and left out. Returns their cells. */
const editAround = (file: WorkbookFile, changes: readonly FileChange[], notes: readonly Note[]): string[] => {
  try {
    file.edit([...changes, ...notes]);
    return [];
  } catch (error) {
    if (!(error instanceof HostProblem) || error.code !== 'occupied') throw error;
  }
  // Something else than a note may be in the way: then this is refused as well, with its own reason.
  file.edit(changes);
  return notesAround(file, notes);
};

/** Halves the notes until those that are refused are alone. */
const notesAround = (file: WorkbookFile, notes: readonly Note[]): string[] => {
  try {
    if (notes.length > 0) file.edit(notes);
    return [];
  } catch (error) {
    if (!(error instanceof HostProblem) || error.code !== 'occupied') throw error;
    const [first] = notes;
    if (notes.length === 1) return [`${first!.sheet}!${cellAddress(first!.row, first!.column)}`];
    const half = notes.length >> 1;
    return [...notesAround(file, notes.slice(0, half)), ...notesAround(file, notes.slice(half))];
  }
};

/** What a checked workbook holds of ours, for the report. */
export const writtenColumns = (plan: WorkbookPlan): string =>
  `${OWN_COLUMNS.length} columns beside the list on sheet ${plan.tables.channels.sheet}, formulas of ${NAMESPACE}`;
