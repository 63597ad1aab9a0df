import { VERDICTS, type Verdict } from '../core/verdict';
import { findOwnBlock, OWN_COLUMNS, ownIndex } from './own-columns';
import { cellAddress, rangeAddress } from './address';
import { tablesOfEachList } from './channel-lists';
import { dittosOf } from './dittos';
import { rowFormulas, rowWriter } from './formulas';
import {
  HostProblem,
  type ApplyOptions,
  type Change,
  type MarkRule,
  type SheetContent,
  type Spreadsheet,
} from './port';
import { keysAsRead } from './remedies/keys-as-read';
import { ROW_NUMBER, type PlanTables } from './row-sources';

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

const REFERENCE = /\$?[A-Z]{1,3}\$?\d+/g;
const shapeOf = (formula: string): string => formula.replace(REFERENCE, '§');
/** Neighbours with our headings in our order, so many that nobody has them by chance. */
const TELLING_RUN = 3;

/**
 * Which columns with a heading of ours are pieces of an old block of ours. A user may have a column "Reason" too, and may
 * call our functions in it: a column is only ours when no cell in it was typed and either its formulas are the ones that we
 * write, or it stands among its old neighbours.
 */
const ownPieces = (
  tables: PlanTables,
  content: SheetContent,
  columns: readonly number[],
  header: readonly unknown[],
): readonly number[] => {
  const { firstRow, lastRow } = tables.channels;
  const keyAt = (c: number): number => {
    const text = header[c];
    return typeof text === 'string'
      ? OWN_COLUMNS.findIndex(({ heading }) => heading.toLowerCase() === text.trim().toLowerCase())
      : -1;
  };
  const ours = rowFormulas(tables, 0).map((formula) => shapeOf(formula.replaceAll(ROW_NUMBER, '1')));
  return columns.filter((c) => {
    const key = keyAt(c);
    let first = c;
    while (keyAt(first - 1) === keyAt(first) - 1 && keyAt(first - 1) >= 0) first--;
    let last = c;
    while (keyAt(last + 1) === keyAt(last) + 1) last++;
    const isAmongOthers = last - first + 1 >= TELLING_RUN;
    let asWeWrite = 0;
    for (let row = firstRow; row <= lastRow; row++) {
      const formula = content.formulas[row - content.row]?.[c] ?? '';
      if (formula === '') {
        if (!isBlank(content.values[row - content.row]?.[c])) return false;
      } else if (shapeOf(formula) === ours[key]) asWeWrite++;
      else if (!isAmongOthers || !/CHAN\.|MATCH\(TRIM\(|NA\(\)/.test(formula)) return false;
    }
    return isAmongOthers || asWeWrite > 0;
  });
};

/** Where our block goes: in its old place, or in the first free columns. Pieces of an old block are cleared. */
export const placeOwnBlock = (
  tables: PlanTables,
  content: SheetContent,
): {
  column: number;
  headingRow: number;
  clear: readonly number[];
  isThere: boolean;
  /** Columns of the user's under a heading like one of ours. */
  others: readonly number[];
} => {
  const { headerRow, headerRows, lastRow, lastColumn } = tables.channels;
  const headingRow = headerRow + headerRows - 1;
  const header = content.values[headingRow - content.row] ?? [];
  const found = findOwnBlock(header);
  if (found.kind === 'whole')
    return { column: content.column + found.column, headingRow, clear: [], isThere: true, others: [] };
  const named = found.kind === 'pieces' ? found.columns : [];
  const pieces = ownPieces(tables, content, named, header);
  const onSheet = (c: number): number => content.column + c;
  return {
    column: freeColumn(content, headerRow, lastRow, lastColumn + 1),
    headingRow,
    clear: pieces.map(onSheet),
    isThere: false,
    others: named.filter((c) => !pieces.includes(c)).map(onSheet),
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
  const write = rowWriter(tables, column, dittosOf(tables.channels, content));
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

/** Refuses before anything is written when something of the user's stands where ours would go, or has its name. */
export const refuseOccupied = (tables: PlanTables, content: SheetContent): void => {
  const { column, headingRow, others } = placeOwnBlock(tables, content);
  const { firstRow, lastRow, sheet, listObject } = tables.channels;
  const range = content.tables.find(({ name }) => name === listObject)?.range;
  const twice = range && others.find((c) => c >= range.column && c < range.column + range.columns);
  if (twice !== undefined)
    throw new HostProblem(
      `Column ${sheet}!${cellAddress(headingRow, twice)} has the heading of one of the check columns, and a table cannot have two of the same. Give it another heading, then check again.`,
      'occupied',
    );
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

/** The command behind "Check": writes our columns beside the channel table, on each of its sheets, as one action. */
export const writeChecks = async (
  spreadsheet: Spreadsheet,
  tables: PlanTables,
  contentOf: (sheet: string) => SheetContent,
  options: Omit<ApplyOptions, 'label'>,
): Promise<void> => {
  const each = tablesOfEachList(tables).map((own) => ({ own, content: contentOf(own.channels.sheet) }));
  for (const { own, content } of each) refuseOccupied(own, content);
  await spreadsheet.apply(
    each.flatMap(({ own, content }) => checkChanges(own, content)),
    {
      label: 'Check channels',
      asRead: each.flatMap(({ own, content }) => keysAsRead(own.channels, content)),
      ...options,
    },
  );
  await spreadsheet.calculated();
};
