import { TABLES } from '../plan/fields';
import { isAbsentText } from '../core/text/absent';
import { isUnitText } from '../plan/heading-text';
import { headingScore } from '../plan/headings';
import { hasNamesBelow, isBelowGroups, ownHeadings, type Headings } from './header-groups';
import type { SheetCells } from './sheet-cells';

/** A place where a table may begin. */
export interface HeaderCandidate {
  readonly cells: SheetCells;
  readonly headerRow: number;
  readonly headerRows: number;
  /** Sheet columns with their headings, rows of a header joined. */
  readonly headings: Headings;
  /** Without the heading of the group above, where there is one. */
  readonly own?: Headings;
  readonly listObject?: string;
  /** Last row of the host's table object. */
  readonly lastRow?: number;
  /** How many headings read as a field. */
  readonly known: number;
}

const ROWS_LOOKED_AT = 120;
const HEADER_ROWS = 3;
const MOST_CANDIDATES = 24;
const MOST_COLUMNS = 400;
const MOST_HEADINGS = 8_000;
/** A heading that reads as a field with at least this score speaks for a header row. */
const KNOWN = 0.7;

const joinHeading = (cells: SheetCells, row: number, rows: number, column: number): string => {
  const parts: string[] = [];
  for (let r = row; r < row + rows; r++) {
    const text = cells.headingAt(r, column);
    if (text !== '' && !/^[-–—.]+$/.test(text) && parts.at(-1) !== text) parts.push(text);
  }
  return parts.join(' ');
};

/** Headings may be numbers (a year, a panel), but a row with many of them is data. */
const isTextRow = (cells: SheetCells, row: number): boolean => {
  let texts = 0;
  let others = 0;
  for (let column = cells.firstColumn; column < cells.endColumn; column++) {
    const cell = cells.at(row, column);
    if (cell === null) continue;
    if (typeof cell === 'string' && cell.length <= 120) texts++;
    else others++;
  }
  return texts > 0 && others <= texts / 4;
};

/** Units under the names belong to the header: without them the numbers below would be read in other units. */
const isUnitRow = (cells: SheetCells, row: number, columns: readonly number[]): boolean => {
  if (row >= cells.endRow) return false;
  const texts = columns.map((column) => cells.at(row, column)).filter((cell) => cell !== null);
  const told = texts.filter((cell) => typeof cell !== 'string' || !isAbsentText(cell));
  const units = told.filter((cell) => typeof cell === 'string' && isUnitText(cell));
  return units.length >= 2 && units.length >= 0.8 * told.length;
};

/** Runs of columns with a heading; a column without heading and data parts two tables side by side. */
const segmentsOf = (cells: SheetCells, below: number, headings: Headings): number[][] => {
  const segments: number[][] = [];
  let current: number[] = [];
  for (let column = cells.firstColumn; column < cells.endColumn; column++) {
    if (headings.has(column)) current.push(column);
    else {
      let hasData = false;
      for (let row = below; row < Math.min(cells.endRow, below + 30) && !hasData; row++)
        hasData = cells.at(row, column) !== null;
      if (!hasData && current.length > 0) {
        segments.push(current);
        current = [];
      }
    }
  }
  if (current.length > 0) segments.push(current);
  return segments;
};

const knownHeadings = (headings: Headings, own?: Headings): number => {
  let most = 0;
  const list = [...headings.keys()].map((column) => own?.get(column) ?? headings.get(column)!);
  for (const table of TABLES)
    most = Math.max(most, list.filter((heading) => headingScore(table, heading) >= KNOWN).length);
  return most;
};

const rowsToTry = (cells: SheetCells): number[] => {
  const rows: number[] = [];
  let before = true;
  for (let row = cells.firstRow; row < cells.endRow; row++) {
    let filled = 0;
    for (let column = cells.firstColumn; column < cells.endColumn && filled < 2; column++)
      if (cells.at(row, column) !== null) filled++;
    // Far down only a row behind a gap or a caption can be a header.
    if (filled >= 2 && (row < cells.firstRow + ROWS_LOOKED_AT || before)) rows.push(row);
    before = filled < 2;
  }
  return rows;
};

export const headingsOver = (
  cells: SheetCells,
  row: number,
  rows: number,
  from: number,
  to: number,
  ignore: (heading: string) => boolean,
): Map<number, string> => {
  const headings = new Map<number, string>();
  for (let column = from; column < to; column++) {
    const heading = joinHeading(cells, row, rows, column);
    const isOurs = Array.from({ length: rows }, (_, i) => cells.headingAt(row + i, column)).some(ignore);
    if (heading !== '' && !isOurs) headings.set(column, heading);
  }
  return headings;
};

const withOwn = ({ headings, own }: HeaderCandidate): Headings =>
  new Map([...headings].map(([column, heading]) => [column, own?.get(column) ?? heading]));

const candidateAt = (
  cells: SheetCells,
  row: number,
  rows: number,
  headings: Headings,
  isAsked: boolean,
): HeaderCandidate | undefined => {
  const columns = [...headings.keys()];
  const own = ownHeadings(cells, row, rows, headings, joinHeading);
  const known = knownHeadings(headings, own);
  if (headings.size < 2 || (!isAsked && known < 2)) return undefined;
  if (rows < HEADER_ROWS && isUnitRow(cells, row + rows, columns)) return undefined;
  const last = row + rows - 1;
  if (!isAsked && rows < HEADER_ROWS && isTextRow(cells, last + 1) && hasNamesBelow(cells, last, columns))
    return undefined;
  if (!isAsked && isBelowGroups(cells, row, columns)) return undefined;
  return { cells, headerRow: row, headerRows: rows, headings, own, known };
};

/** Every place on the sheet where a header of one to three rows may stand. */
export const headerCandidates = (
  cells: SheetCells,
  ignore: (heading: string) => boolean,
  asked?: number,
): HeaderCandidate[] => {
  const found: HeaderCandidate[] = [];
  for (const { name, range } of cells.content.tables) {
    const headings = headingsOver(cells, range.row, 1, range.column, range.column + range.columns, ignore);
    const lastRow = range.row + range.rows - 1;
    const known = knownHeadings(headings);
    if (headings.size > 0)
      found.push({ cells, headerRow: range.row, headerRows: 1, headings, listObject: name, lastRow, known });
  }
  const seen = new Set<string>();
  const repeated = new Set<number>();
  let looked = 0;
  const isInside = (row: number, column: number): boolean =>
    cells.content.tables.some(
      ({ range: r }) => row >= r.row && row < r.row + r.rows && column >= r.column && column < r.column + r.columns,
    );
  for (const row of asked === undefined ? rowsToTry(cells) : [asked]) {
    if (looked > MOST_HEADINGS) break;
    for (let rows = 1; rows <= HEADER_ROWS; rows++) {
      const last = row + rows - 1;
      if (asked === undefined && (last >= cells.endRow || !isTextRow(cells, last))) break;
      const all = headingsOver(cells, row, rows, cells.firstColumn, cells.endColumn, ignore);
      for (const segment of segmentsOf(cells, row + rows, all)) {
        const headings = new Map(
          segment
            .filter((c) => !isInside(row, c))
            .slice(0, MOST_COLUMNS)
            .map((c) => [c, all.get(c) ?? '']),
        );
        looked += headings.size;
        const candidate = candidateAt(cells, row, rows, headings, asked !== undefined);
        if (!candidate || (rows > 1 && repeated.has(row))) continue;
        // A header printed again further down belongs to the table that began above.
        const same = [headings, withOwn(candidate)].map((one) => JSON.stringify([...one]));
        if (same.some((one) => seen.has(one))) repeated.add(row);
        else found.push(candidate);
        for (const one of same) seen.add(one);
      }
    }
  }
  // A sheet full of such rows is no plan; these bounds keep the time spent on it short.
  return found.sort((a, b) => b.known - a.known || a.headerRow - b.headerRow).slice(0, MOST_CANDIDATES);
};
