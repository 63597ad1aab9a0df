import type { Language } from '../../core/language';
import { fromSi, UNITS } from '../../core/units';
import type { Cell } from '../../functions/define';
import { fieldByKey } from '../../plan/fields';
import { rangeEnds, readCell } from '../../plan/table-cell';
import { cellAddress } from '../address';
import { byList } from '../channel-lists';
import { isBlank } from '../check';
import { HostProblem, type ApplyOptions, type Change, type SheetContent, type Spreadsheet } from '../port';
import type { RecognisedTables } from '../recognise';
import type { ColumnUse, RecognisedTable } from '../tables';
import { EDIT_WORDS } from './row-edit-words';

/** What shall stand in a cell of the channel list, as a person would type it. */
export interface RowEdit {
  /** 0-based row of the sheet; of several sheets, see `rowIdOf`. */
  readonly row: number;
  /** Field of the channel list. */
  readonly key: string;
  readonly value: number | string | null;
}

const DIGITS = 12;

/** A number in SI as the column's cells are read: bare in the unit of its heading, else with our own unit written out. */
export const cellOfSi = (key: string, si: number, column: ColumnUse | undefined): number | string => {
  const { unit = '1' } = fieldByKey('channels', key);
  const rounded = (of: typeof unit) => Number(fromSi(si, of).toPrecision(DIGITS));
  if (column?.unit) return rounded(column.unit);
  return column?.unitText === undefined ? rounded(unit) : `${rounded(unit)} ${UNITS[unit].label}`.trim();
};

const cellAt = <T>(block: readonly (readonly T[])[], content: SheetContent, row: number, column: number) =>
  block[row - content.row]?.[column - content.column];

const isSame = (now: unknown, value: RowEdit['value']): boolean => now === value || (isBlank(now) && isBlank(value));

/** One end written over a cell that holds both would lose the other. */
const losesOtherEnd = (key: string, now: Cell | undefined, value: RowEdit['value'], column: ColumnUse): boolean => {
  const field = fieldByKey('channels', key);
  if (!rangeEnds(key) || typeof now !== 'string') return false;
  return readCell(field, now, column).kind === 'range' && readCell(field, value, column).kind !== 'range';
};

/** Why these cells cannot be written, one sentence each; empty when they can. */
export const refusalsOf = (
  { sheet, columns }: RecognisedTable,
  content: SheetContent,
  edits: readonly RowEdit[],
  language: Language = 'en',
): readonly string[] => {
  const words = EDIT_WORDS[language];
  const refused = new Set<string>();
  for (const { row, key, value } of edits) {
    const column = columns.get(key)?.column;
    if (column === undefined) {
      refused.add(words.noColumn(fieldByKey('channels', key).title));
      continue;
    }
    const now = cellAt(content.values, content, row, column);
    if (isSame(now, value)) continue;
    const at = `${sheet}!${cellAddress(row, column)}`;
    if (losesOtherEnd(key, now, value, columns.get(key)!)) refused.add(words.range(at, String(now)));
    const formula = cellAt(content.formulas, content, row, column) ?? '';
    if (formula !== '') refused.add(words.formula(at, formula));
    const merged = content.merged.find(
      (m) => row >= m.row && row < m.row + m.rows && column >= m.column && column < m.column + m.columns,
    );
    if (merged && merged.rows * merged.columns > 1) refused.add(words.merged(at));
    if (typeof value === 'string' && value.startsWith('=')) refused.add(words.equals(value));
  }
  return [...refused];
};

/** Only cells that differ from what stands there, cells below each other as one change. */
export const editChanges = (
  { sheet, columns }: RecognisedTable,
  content: SheetContent,
  edits: readonly RowEdit[],
): readonly Extract<Change, { kind: 'cells' }>[] => {
  const byColumn = new Map<number, Map<number, RowEdit['value']>>();
  for (const { row, key, value } of edits) {
    const column = columns.get(key)?.column;
    if (column === undefined) continue;
    const now = cellAt(content.values, content, row, column);
    if (isSame(now, value)) continue;
    const rows = byColumn.get(column) ?? new Map<number, RowEdit['value']>();
    byColumn.set(column, rows.set(row, value));
  }
  return [...byColumn].flatMap(([column, rows]) =>
    runsOf(rows).map((run) => ({ kind: 'cells', sheet, column, ...run })),
  );
};

const runsOf = (rows: ReadonlyMap<number, RowEdit['value']>) => {
  const runs: { row: number; cells: RowEdit['value'][][] }[] = [];
  for (const [row, value] of [...rows].sort(([a], [b]) => a - b)) {
    const last = runs[runs.length - 1];
    if (last && last.row + last.cells.length === row) last.cells.push([value]);
    else runs.push({ row, cells: [[value]] });
  }
  return runs;
};

export interface WriteOptions extends Omit<ApplyOptions, 'label'> {
  readonly language?: Language;
}

/** A workbook as it was read. */
export interface PlanSource {
  readonly tables: RecognisedTables;
  readonly contentOf: (sheet: string) => SheetContent;
}

/** Why cells of any of the plan's sheets cannot be written; empty when they can. */
export const planRefusals = (
  { tables, contentOf }: PlanSource,
  edits: readonly RowEdit[],
  language: Language = 'en',
): readonly string[] =>
  byList(tables, edits).flatMap(({ table, items }) => refusalsOf(table, contentOf(table.sheet), items, language));

export const planChanges = (
  { tables, contentOf }: PlanSource,
  edits: readonly RowEdit[],
): readonly Extract<Change, { kind: 'cells' }>[] =>
  byList(tables, edits).flatMap(({ table, items }) => editChanges(table, contentOf(table.sheet), items));

/** Writes the cells as one action, or refuses all of them in sentences. Returns how many cells it wrote. */
export const writeEdits = async (
  spreadsheet: Spreadsheet,
  source: PlanSource,
  edits: readonly RowEdit[],
  label: string,
  { language = 'en', ...options }: WriteOptions = {},
): Promise<number> => {
  const refused = planRefusals(source, edits, language);
  if (refused.length > 0) throw new HostProblem(EDIT_WORDS[language].nothing(refused), 'occupied');
  const changes = planChanges(source, edits);
  if (changes.length === 0) return 0;
  await spreadsheet.apply(changes, { label, ...options });
  await spreadsheet.calculated();
  return changes.reduce((sum, { cells }) => sum + cells.length, 0);
};
