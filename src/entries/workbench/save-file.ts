import { holds } from '../../adapters/xlsx/cell-reference';
import type { FileChange } from '../../adapters/xlsx/changes';
import type { WorkbookFile } from '../../adapters/xlsx/workbook-file';
import { isCellError } from '../../functions/define';
import { cellAddress } from '../../workbook/address';
import { cellDifferences, type CellDifference, type SheetComparison } from '../../workbook/cell-differences';
import { tablesOfEachList } from '../../workbook/channel-lists';
import { checkChanges } from '../../workbook/check';
import { OWN_COLUMNS } from '../../workbook/own-columns';
import type { RangeAddress, SheetContent } from '../../workbook/port';
import { readResults } from '../../workbook/results';
import type { PlanTables } from '../../workbook/row-sources';
import type { WholeSheet } from '../../workbook/whole-sheet';
import { blocksOf } from './cell-blocks';
import { addedSheet, cellsAsShown, renewedSheet } from './added-sheets';

/** A sheet as the grid shows it, and what is known of how it came to be so. */
export interface GridSheet extends Omit<SheetComparison, 'file' | 'own'> {
  numberFormat(row: number, column: number): string | undefined;
  /** What changed of how cells look, but for those that are left to us. */
  looks(isOurs: (row: number, column: number) => boolean): readonly WholeSheet['looks'][number][];
}
export interface SavedFile {
  readonly bytes: Uint8Array;
  /** Cells of the user that hold something else, cells of the user worked out anew, and cells of ours. */
  readonly counts: Readonly<Record<CellDifference['kind'] | 'looks', number>>;
  /** Sheets that the file did not have. */
  readonly added: readonly string[];
  /** Formulas of the user that keep an old value, by place. */
  readonly stale: readonly string[];
  readonly told: readonly string[];
}

/** A number whose format says what it is: without it a typed date would show as a count of days. */
const SPEAKING = /[ymdhs%]/i;

const typedFormats = (sheet: string, grid: GridSheet, differences: readonly CellDifference[]): FileChange[] =>
  differences.flatMap(({ row, column, cell, kind }) => {
    const numberFormat = kind === 'edited' && typeof cell === 'number' ? grid.numberFormat(row, column) : undefined;
    if (!numberFormat || !SPEAKING.test(numberFormat.replace(/"[^"]*"|\[[^\]]*\]|\\./g, ''))) return [];
    return [{ kind: 'look', sheet, range: { row, column, rows: 1, columns: 1 }, look: { numberFormat } }];
  });

const ownBlock = (tables: PlanTables, content: SheetContent): RangeAddress | undefined => {
  const { channels } = tables;
  const results = readResults(channels, content);
  const row = channels.headerRow + channels.headerRows - 1;
  return results && { row, column: results.column, rows: channels.lastRow - row + 1, columns: OWN_COLUMNS.length };
};

/** Our columns' looks, widths and marks as a check gives them, and their place in the user's table. */
const dress = (tables: PlanTables, file: SheetContent, grid: SheetContent, own: RangeAddress): FileChange[] => {
  const { sheet, listObject } = tables.channels;
  const table = file.tables.find(({ name }) => name === listObject)?.range;
  const columns = table ? own.column + own.columns - table.column - table.columns : 0;
  const kinds = new Set(['look', 'width', 'marks']);
  return [
    ...checkChanges(tables, grid).filter(({ kind }) => kinds.has(kind)),
    ...(listObject && columns > 0 ? [{ kind: 'extend-table', sheet, table: listObject, columns } as const] : []),
  ];
};

/** What has to be done to one sheet of the file. */
const sheetChanges = (
  name: string,
  file: SheetContent,
  grid: GridSheet,
  tables: PlanTables | undefined,
): { changes: FileChange[]; differences: readonly CellDifference[]; looks: number } => {
  const plan = tables && tablesOfEachList(tables).find(({ channels }) => channels.sheet === name);
  const own = plan && ownBlock(plan, grid.grid);
  const before = plan && ownBlock(plan, file);
  const differences = cellDifferences({ ...grid, file, own });
  const isOurs = (row: number, column: number): boolean =>
    [own, before].some((block) => block !== undefined && holds(block, row, column));
  const looks = grid.looks(isOurs);
  const changes: FileChange[] = [
    ...blocksOf(name, differences),
    ...typedFormats(name, grid, differences),
    ...looks.map(({ range, look }): FileChange => ({ kind: 'look', sheet: name, range, look })),
  ];
  const isRewritten = differences.some(({ kind, row, column }) => kind === 'own' && !isFormula(file, row, column));
  if (plan && own && isRewritten) changes.push(...dress(plan, file, grid.grid, own));
  if (before && !own)
    changes.unshift({ kind: 'clear', sheet: name, range: before }, { kind: 'marks', sheet: name, rules: [] });
  return { changes, differences, looks: looks.reduce((sum, { range }) => sum + range.rows * range.columns, 0) };
};

/** Holds a new workbook to what the grid shows; values that its writer does not know, as errors, are put right. */
export const matchGrid = (
  file: WorkbookFile,
  sheets: ReadonlyMap<string, { readonly content: SheetContent; readonly spills: readonly RangeAddress[] }>,
): void => {
  file.edit([...sheets].flatMap(([name, shown]) => cellsAsShown(file.readSheet(name), shown)));
};

const isFormula = ({ row, column, formulas }: SheetContent, r: number, c: number): boolean =>
  (formulas[r - row]?.[c - column] ?? '') !== '';

/** Formulas of the user that read what was written here, and whose values cannot be worked out here. */
const staleCells = (file: WorkbookFile, sheets: ReadonlyMap<string, GridSheet>): string[] => {
  const failing = new Set<string>();
  for (const [name, { grid }] of sheets)
    grid.values.forEach((line, r) =>
      line.forEach((value, c) => {
        if (isCellError(value)) failing.add(`${name}!${cellAddress(grid.row + r, grid.column + c)}`);
      }),
    );
  return failing.size === 0 ? [] : file.dependents().filter((place) => failing.has(place));
};

/** Applies what the grid shows to the file that was opened. Rejects with the editor's own sentence, nothing written. */
export const saveIntoFile = (
  original: Uint8Array,
  file: WorkbookFile,
  sheets: ReadonlyMap<string, GridSheet>,
  tables: PlanTables | undefined,
  settings: ReadonlyMap<string, string | undefined>,
  whole: {
    readonly renamed: ReadonlyMap<string, string>;
    readonly added: readonly WholeSheet[];
    readonly renewed: readonly WholeSheet[];
  },
): SavedFile => {
  const changes: FileChange[] = [];
  const counts = { edited: 0, renewed: 0, own: 0, looks: 0 };
  file.rename(whole.renamed);
  const renewed = new Map(whole.renewed.map((sheet) => [sheet.content.sheet, sheet]));
  for (const { name } of file.sheets) {
    const grid = sheets.get(name);
    if (!grid) continue;
    const again = renewed.get(name);
    if (again) {
      changes.push(...renewedSheet(again, file.readSheet(name)));
      continue;
    }
    const sheet = sheetChanges(name, file.readSheet(name), grid, tables);
    changes.push(...sheet.changes);
    sheet.differences.forEach(({ kind }) => (counts[kind] += 1));
    counts.looks += sheet.looks;
  }
  changes.push(...whole.added.flatMap(addedSheet));
  let isChanged = changes.length > 0 || whole.renamed.size > 0;
  if (changes.length > 0) file.edit(changes);
  isChanged = file.arrange([...sheets.keys()]) || isChanged;
  for (const [key, json] of settings)
    if (file.getSetting(key) !== json) {
      file.setSetting(key, json);
      isChanged = true;
    }
  if (!isChanged) return { bytes: original, counts, added: [], stale: [], told: [] };
  const bytes = file.save();
  const added = whole.added.map(({ content }) => content.sheet);
  return { bytes, counts, added, stale: staleCells(file, sheets), told: [...file.warnings] };
};
