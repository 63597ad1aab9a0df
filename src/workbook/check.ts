import { VERDICTS, type Verdict } from '../core/verdict';
import { findOwnBlock, OWN_COLUMNS, ownIndex } from './own-columns';
import { rangeAddress } from './address';
import { rowWriter } from './formulas';
import {
  HostProblem,
  type ApplyOptions,
  type Change,
  type MarkRule,
  type SheetContent,
  type Spreadsheet,
} from './port';
import type { PlanTables } from './row-sources';

/** Colours of the verdict cells: distinct for colour-blind readers (blue, amber, vermilion, grey) and of different lightness in a grey print. */
export const VERDICT_COLOURS: Readonly<Record<Verdict, { ink: string; ground: string }>> = {
  PASS: { ink: '#0b4a75', ground: '#e3f0f8' },
  WARN: { ink: '#5c3d00', ground: '#fbdf9d' },
  FAIL: { ink: '#ffffff', ground: '#b23a0e' },
  INCOMPLETE: { ink: '#3d3d3d', ground: '#d9d9d6' },
};
const HEADER_LOOK = { bold: true, ink: '#0f4c4a', ground: '#e6efee', wrap: true } as const;
const WORKING_LOOK = { ink: '#6b6f6e' } as const;

export const isBlank = (cell: unknown): boolean => cell === null || cell === undefined || cell === '';

/** First column right of the list in which nobody has anything from the header row down to the last row of the list. */
const freeColumn = (content: SheetContent, headerRow: number, lastRow: number, after: number): number => {
  let column = after;
  for (let row = headerRow; row <= lastRow; row++) {
    const values = content.values[row - content.row] ?? [];
    const formulas = content.formulas[row - content.row] ?? [];
    for (let c = values.length - 1; c >= 0 && content.column + c >= column; c--)
      if (!isBlank(values[c]) || !isBlank(formulas[c])) {
        column = content.column + c + 1;
        break;
      }
  }
  const overlapping = content.merged.find(
    (m) => m.column + m.columns > column && m.row <= lastRow && m.row + m.rows > headerRow,
  );
  return overlapping ? overlapping.column + overlapping.columns : column;
};

/** Where our block goes: in its old place, or in the first free columns. Pieces of an old block are cleared. */
export const placeOwnBlock = (
  tables: PlanTables,
  content: SheetContent,
): { column: number; headingRow: number; clear: readonly number[]; isThere: boolean } => {
  const { headerRow, headerRows, lastRow, lastColumn } = tables.channels;
  const headingRow = headerRow + headerRows - 1;
  const header = content.values[headingRow - content.row] ?? [];
  const found = findOwnBlock(header);
  if (found.kind === 'whole') return { column: content.column + found.column, headingRow, clear: [], isThere: true };
  return {
    column: freeColumn(content, headerRow, lastRow, lastColumn + 1),
    headingRow,
    clear: found.kind === 'pieces' ? found.columns.map((c) => content.column + c) : [],
    isThere: false,
  };
};

const marksOf = (column: number, row: number, rows: number): readonly MarkRule[] =>
  OWN_COLUMNS.flatMap(({ kind }, i) =>
    kind === 'verdict'
      ? VERDICTS.map((verdict) => ({
          range: { row, column: column + i, rows, columns: 1 },
          equals: verdict,
          ...VERDICT_COLOURS[verdict],
        }))
      : [],
  );

/** When the list is a table of the host's, it takes our columns in; a table that already has them stays as it is. */
const tableGrowth = (tables: PlanTables, content: SheetContent, end: number): readonly Change[] => {
  const { sheet, listObject } = tables.channels;
  const table = content.tables.find(({ name }) => name === listObject);
  const missing = table ? end - (table.range.column + table.range.columns) : 0;
  return table && missing > 0 ? [{ kind: 'extend-table', sheet, table: table.name, columns: missing }] : [];
};

/** Formulas that are the same already need no writing; inside a table a second writing costs the host most. */
const standsAlready = (
  content: SheetContent,
  firstRow: number,
  column: number,
  formulas: readonly (readonly (string | null)[])[],
): boolean =>
  formulas.every((row, r) =>
    row.every(
      (formula, c) =>
        (content.formulas[firstRow + r - content.row]?.[column + c - content.column] ?? '') === (formula ?? ''),
    ),
  );

/** Everything that one press of "Check" changes on the sheet: our columns and nothing else. */
export const checkChanges = (tables: PlanTables, content: SheetContent): readonly Change[] => {
  const { sheet, firstRow, lastRow, skippedRows, listObject } = tables.channels;
  const { column, isThere } = placeOwnBlock(tables, content);
  const skipped = new Set(skippedRows);
  const blank = OWN_COLUMNS.map(() => null);
  const write = rowWriter(tables, column);
  const cells = Array.from({ length: lastRow - firstRow + 1 }, (_, i) =>
    skipped.has(firstRow + i) ? blank : write(firstRow + i),
  );
  const stands = isThere && listObject !== undefined && standsAlready(content, firstRow, column, cells);
  return changesWith<Change>(tables, content, stands ? [] : [{ kind: 'cells', sheet, row: firstRow, column, cells }]);
};

/** The same around cells that somebody else writes in the rows of the block. */
export const changesWith = <C>(
  tables: PlanTables,
  content: SheetContent,
  cells: readonly C[],
): readonly (Change | C)[] => {
  const { sheet, firstRow, lastRow } = tables.channels;
  const { column, headingRow, clear, isThere } = placeOwnBlock(tables, content);
  const rows = lastRow - firstRow + 1;
  const block = (at: number, height: number, first = 0, width = OWN_COLUMNS.length) => ({
    row: at,
    column: column + first,
    rows: height,
    columns: width,
  });
  const headings: Change = {
    kind: 'cells',
    sheet,
    row: headingRow,
    column,
    cells: [OWN_COLUMNS.map(({ heading }) => heading)],
  };
  const firstWorking = OWN_COLUMNS.findIndex(({ kind }) => kind === 'working');
  return [
    ...clear.map((c): Change => ({
      kind: 'clear',
      sheet,
      range: { row: headingRow, column: c, rows: lastRow - headingRow + 1, columns: 1 },
    })),
    ...tableGrowth(tables, content, column + OWN_COLUMNS.length),
    // A table takes a heading that is written again for a renaming.
    ...(isThere ? [] : [headings]),
    ...cells,
    { kind: 'look', sheet, range: block(headingRow, 1), look: HEADER_LOOK },
    {
      kind: 'look',
      sheet,
      range: block(firstRow, rows, firstWorking, OWN_COLUMNS.length - firstWorking),
      look: WORKING_LOOK,
    },
    { kind: 'look', sheet, range: block(firstRow, rows, ownIndex('reason'), 1), look: { align: 'left' } },
    ...OWN_COLUMNS.flatMap(({ numberFormat, kind }, i): Change[] => [
      ...(numberFormat
        ? [{ kind: 'look', sheet, range: block(firstRow, rows, i, 1), look: { numberFormat, align: 'right' } } as const]
        : []),
      ...(kind === 'verdict'
        ? [{ kind: 'look', sheet, range: block(firstRow, rows, i, 1), look: { bold: true, align: 'center' } } as const]
        : []),
    ]),
    ...OWN_COLUMNS.map(({ characters }, i): Change => ({
      kind: 'width',
      sheet,
      column: column + i,
      columns: 1,
      characters,
    })),
    { kind: 'marks', sheet, rules: marksOf(column, firstRow, rows) },
  ];
};

/** Refuses before anything is written when a cell of the user's stands where ours would go. */
const refuseOccupied = (tables: PlanTables, content: SheetContent): void => {
  const { column } = placeOwnBlock(tables, content);
  const { firstRow, lastRow, sheet } = tables.channels;
  const merged = content.merged.find(
    (m) =>
      m.column + m.columns > column &&
      m.column < column + OWN_COLUMNS.length &&
      m.row <= lastRow &&
      m.row + m.rows > firstRow,
  );
  if (merged)
    throw new HostProblem(
      `Merged cells at ${sheet}!${rangeAddress(merged)} stand where the check columns go. Unmerge them or move them, then check again.`,
      'occupied',
    );
};

/** The command behind "Check": writes our columns beside the channel table as one action. */
export const writeChecks = async (
  spreadsheet: Spreadsheet,
  tables: PlanTables,
  content: SheetContent,
  options: Omit<ApplyOptions, 'label'>,
): Promise<void> => {
  refuseOccupied(tables, content);
  await spreadsheet.apply(checkChanges(tables, content), { label: 'Check channels', ...options });
  await spreadsheet.calculated();
};
