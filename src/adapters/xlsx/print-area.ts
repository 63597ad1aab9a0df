import { rangeAddress } from '../../workbook/address';
import type { RangeAddress } from '../../workbook/port';
import { columnNumber, parseRange } from './cell-reference';
import { LAST_COLUMN, LAST_ROW } from './limits';
import type { DefinedName } from './workbook-part';

const PRINT_AREA = '_xlnm.print_area';

/** "$A:$K" or "$1:$20", as set by whoever selected whole columns or rows. */
const wholeLines = (text: string): RangeAddress | undefined => {
  const [, a, b] = /^\$?([A-Za-z]{1,3}):\$?([A-Za-z]{1,3})$/.exec(text) ?? [];
  if (a && b) {
    const [first, last] = [columnNumber(a), columnNumber(b)].sort((x, y) => x - y) as [number, number];
    return first < 0 ? undefined : { row: 0, column: first, rows: LAST_ROW + 1, columns: last - first + 1 };
  }
  const [, from, to] = /^\$?([0-9]{1,7}):\$?([0-9]{1,7})$/.exec(text) ?? [];
  if (!from || !to) return undefined;
  const [first, last] = [Number(from), Number(to)].sort((x, y) => x - y) as [number, number];
  return { row: first - 1, column: 0, rows: last - first + 1, columns: LAST_COLUMN + 1 };
};

/** The areas of a sheet that are printed; undefined where none is set or a formula works it out. */
const printedAreas = (names: readonly DefinedName[], sheet: string): readonly RangeAddress[] | undefined => {
  const set = names.find(
    (name) => name.name.toLowerCase() === PRINT_AREA && name.sheet?.toLowerCase() === sheet.toLowerCase(),
  );
  const areas = set?.text.match(/(?:'(?:[^']|'')*'|[^',])+/g)?.map((part) => {
    const text = part.slice(part.lastIndexOf('!') + 1).trim();
    return parseRange(text) ?? wholeLines(text);
  });
  return areas?.every((area) => area !== undefined) ? (areas as RangeAddress[]) : undefined;
};

const covers = (area: RangeAddress, { row, column, rows, columns }: RangeAddress): boolean =>
  area.row <= row &&
  area.column <= column &&
  area.row + area.rows >= row + rows &&
  area.column + area.columns >= column + columns;

/** What to tell when a range will not be on paper because the sheet's print area leaves it out. */
export const notPrinted = (names: readonly DefinedName[], sheet: string, range: RangeAddress): string | undefined => {
  const areas = printedAreas(names, sheet);
  if (!areas || areas.some((area) => covers(area, range))) return undefined;
  return `Sheet ${sheet} prints ${areas.map(rangeAddress).join(', ')} only; our columns ${rangeAddress(range)} are not on paper until you widen the print area.`;
};
