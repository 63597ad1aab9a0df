import { VERDICTS, type Verdict } from '../core/verdict';
import { NO_TEXT } from '../functions/verdict/cell-findings';
import { channelLists, rowIdOf } from './channel-lists';
import { findOwnBlock, OWN_COLUMNS, ownIndex, type OwnKey } from './own-columns';
import type { SheetContent } from './port';
import type { RecognisedTable } from './tables';
import type { Cell } from '../functions/define';

export const HEADLINES = ['level', 'mass', 'thermal', 'frequency'] as const;
export type Headline = (typeof HEADLINES)[number];

/** One channel row as our cells show it. */
export interface RowResult {
  /** 0-based row on the sheet; in a plan over several sheets see `rowIdOf`. */
  readonly row: number;
  /** The sheet, where the plan is spread over several. */
  readonly sheet?: string;
  readonly channel: string;
  /** Where it is, in the words of the list. */
  readonly place: string;
  readonly verdict: Verdict;
  readonly headlines: Readonly<Record<Headline, Verdict>>;
  readonly reason: string;
}
export interface Results {
  readonly rows: readonly RowResult[];
  readonly counts: Readonly<Record<Verdict, number>>;
  /** 0-based first column of our block; on the first sheet of several. */
  readonly column: number;
}

const asVerdict = (cell: Cell | undefined): Verdict => VERDICTS.find((verdict) => verdict === cell) ?? 'INCOMPLETE';
const asReason = (cell: Cell | undefined): string => (cell === NO_TEXT ? '' : asText(cell));
const asText = (cell: Cell | undefined): string =>
  cell === null || cell === undefined || typeof cell === 'object' ? '' : String(cell).trim();

/** Reads our columns back, worst rows first; undefined while the table has not been checked. */
export const readResults = (table: RecognisedTable, content: SheetContent): Results | undefined => {
  const headingRow = table.headerRow + table.headerRows - 1;
  const found = findOwnBlock(content.values[headingRow - content.row] ?? []);
  if (found.kind !== 'whole') return undefined;
  const skipped = new Set(table.skippedRows);
  const counts: Record<Verdict, number> = { PASS: 0, WARN: 0, INCOMPLETE: 0, FAIL: 0 };
  const rows: RowResult[] = [];
  for (let row = table.firstRow; row <= table.lastRow; row++) {
    if (skipped.has(row)) continue;
    const cells = content.values[row - content.row] ?? [];
    const own = (key: OwnKey) => cells[found.column + ownIndex(key)];
    const typed = (key: string) => asText(cells[(table.columns.get(key)?.column ?? -1) - content.column]);
    const verdict = asVerdict(own('verdict'));
    counts[verdict] += 1;
    rows.push({
      row,
      channel: typed('channel') || `row ${row + 1}`,
      place: [typed('point') + typed('direction'), typed('location')].filter(Boolean).join(' · '),
      verdict,
      headlines: {
        level: asVerdict(own('levelVerdict')),
        mass: asVerdict(own('massVerdict')),
        thermal: asVerdict(own('thermalVerdict')),
        frequency: asVerdict(own('frequencyVerdict')),
      },
      reason: asReason(own('reason')),
    });
  }
  return { rows: rows.sort(worstFirst), counts, column: content.column + found.column };
};

const severity = ({ verdict }: RowResult): number => VERDICTS.indexOf(verdict);
const worstFirst = (a: RowResult, b: RowResult): number => severity(b) - severity(a) || a.row - b.row;

/** The results of a plan on all its sheets; undefined until each of them has been checked. */
export const readAllResults = (
  tables: { readonly channels?: RecognisedTable },
  contentOf: (sheet: string) => SheetContent,
): Results | undefined => {
  const lists = channelLists(tables);
  const each = lists.map((list) => readResults(list, contentOf(list.sheet)));
  const [first] = each;
  if (!first || each.length === 1) return first;
  const counts = { ...first.counts };
  const rows: RowResult[] = [];
  for (const [list, results] of each.entries()) {
    if (!results) return undefined;
    const { sheet } = lists[list]!;
    rows.push(...results.rows.map((result) => ({ ...result, sheet, row: rowIdOf(list, result.row) })));
    if (list > 0) for (const verdict of VERDICTS) counts[verdict] += results.counts[verdict];
  }
  return { rows: rows.sort(worstFirst), counts, column: first.column };
};

export const resultRange = (results: Results, row: number) => ({
  row,
  column: results.column,
  rows: 1,
  columns: OWN_COLUMNS.length,
});
