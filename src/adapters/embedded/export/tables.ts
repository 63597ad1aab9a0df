import type { RangeAddress, SheetContent } from '../../../workbook/port';

export interface SimpleTable {
  readonly name: string;
  readonly range: RangeAddress;
  readonly headings: readonly string[];
}

/** Tables as a file can hold them: each needs a text of its own over every column; one without stays a plain range. */
export const simpleTables = ({ tables, values, row, column }: SheetContent): SimpleTable[] =>
  tables.flatMap(({ name, range }) => {
    const headings = Array.from(
      { length: range.columns },
      (_, i) => values[range.row - row]?.[range.column + i - column],
    );
    const isSimple =
      range.rows > 1 &&
      headings.every((heading): heading is string => typeof heading === 'string' && heading !== '') &&
      new Set(headings.map((heading) => String(heading).toLowerCase())).size === headings.length;
    return isSimple ? [{ name, range, headings: headings as string[] }] : [];
  });
