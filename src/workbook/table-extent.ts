import { foldWords } from '../plan/heading-text';
import { LANGUAGES } from '../plan/words/languages';
import type { HeaderCandidate } from './header-rows';
import type { SheetCells } from './sheet-cells';

export interface TableExtent {
  readonly firstRow: number;
  /** Before firstRow when the table has no rows. */
  readonly lastRow: number;
  readonly skippedRows: readonly number[];
  /** Those of them in which everything is crossed out. */
  readonly crossedRows?: readonly number[];
}

const BLANK_ROWS_THAT_END = 2;
/** Behind a gap, rows filled this much less than the others are notes below the table. */
const NOTE_FILL = 0.3;
const TOTALS = new Set(LANGUAGES.flatMap(({ totals }) => totals.map((word) => foldWords(word).join(''))));

const COUNTS = new Set(LANGUAGES.flatMap(({ counts }) => counts.map((word) => foldWords(word).join(''))));
const CHANNELS = new Set(
  LANGUAGES.flatMap(({ tables }) => (tables['channels'] ?? []).flatMap((word) => foldWords(word))),
);

const firstText = (cells: SheetCells, row: number, columns: readonly number[]): string => {
  for (const column of columns) {
    const cell = cells.at(row, column);
    if (typeof cell === 'string') return cell;
  }
  return '';
};

const isTotal = (cells: SheetCells, row: number, columns: readonly number[]): boolean => {
  const words = foldWords(firstText(cells, row, columns)).map((word) => word.replace(/\.+$/, ''));
  if (words.length <= 4 && COUNTS.has(words[0] ?? '') && words.some((word) => CHANNELS.has(word))) return true;
  return words.length <= 4 && TOTALS.has(words[0] ?? '') ? true : words.length === 2 && TOTALS.has(words.join(''));
};

const isRepeatedHeader = (header: HeaderCandidate, row: number): boolean => {
  let same = 0;
  let other = 0;
  for (const column of header.headings.keys()) {
    const text = header.cells.headingAt(row, column);
    if (text === '') continue;
    if (header.cells.headingAt(header.headerRow + header.headerRows - 1, column) === text) same++;
    else if (header.cells.headingAt(header.headerRow, column) === text) same++;
    else other++;
  }
  return same >= 2 && same > 2 * other;
};

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;

/** The rows of a table: to its end, with the rows that carry no item listed. */
export const tableExtent = (
  header: HeaderCandidate,
  mapped: readonly number[],
  headersBelow: ReadonlySet<number>,
): TableExtent => {
  const { cells, headings } = header;
  const all = [...headings.keys()];
  const firstRow = header.headerRow + header.headerRows;
  const end = header.lastRow === undefined ? cells.endRow : Math.min(cells.endRow, header.lastRow + 1);
  const items: { row: number; filled: number; group: number; isCrossed: boolean }[] = [];
  let blanks = 0;
  let group = 0;
  for (let row = firstRow; row < end; row++) {
    if (cells.isBlankRow(row, all)) {
      blanks++;
      if (blanks === 1) group++;
      if (blanks >= BLANK_ROWS_THAT_END && header.lastRow === undefined) break;
      continue;
    }
    blanks = 0;
    if (isRepeatedHeader(header, row)) continue;
    if (headersBelow.has(row) && header.lastRow === undefined) break;
    const told = mapped.filter((column) => cells.at(row, column) !== null);
    const filled = told.length;
    const crossed = cells.content.crossedOut?.get(row);
    const isCrossed = crossed !== undefined && told.every((column) => crossed.includes(column));
    const isItem = filled >= Math.min(2, mapped.length) && !isTotal(cells, row, all);
    if (isItem) items.push({ row, filled, group, isCrossed });
  }
  const usual = median(items.map(({ filled }) => filled));
  while (header.lastRow === undefined) {
    const last = items.at(-1);
    if (last === undefined || last.group === items[0]!.group) break;
    const tail = items.filter((item) => item.group === last.group);
    if (tail.some(({ filled }) => filled >= NOTE_FILL * usual)) break;
    items.splice(items.length - tail.length);
  }
  const lastRow = items.at(-1)?.row ?? firstRow - 1;
  const carrying = new Set(items.flatMap(({ row, isCrossed }) => (isCrossed ? [] : [row])));
  const crossedRows = items.flatMap(({ row, isCrossed }) => (isCrossed ? [row] : []));
  const skippedRows: number[] = [];
  for (let row = firstRow; row <= lastRow; row++) if (!carrying.has(row)) skippedRows.push(row);
  return { firstRow, lastRow, skippedRows, ...(crossedRows.length > 0 && { crossedRows }) };
};
