import type { SheetContent } from '../port';
import type { RecognisedTables } from '../recognise';
import type { ColumnPlace } from './choices';
import { headedColumns } from './proposals';

export interface NamedPlaces {
  readonly columns: readonly ColumnPlace[];
  readonly sheets: readonly string[];
}

const same = (a: string, b: string): boolean => a.trim().toLowerCase() === b.trim().toLowerCase();
/** Headings of sheets that are no list of ours stand in their first rows. */
const HEADING_ROWS = 12;

const columnOfLetters = (letters: string): number =>
  [...letters.toUpperCase()].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;

/** What a person means by "Prices", "Sensors!Serial" or "Sensors!G": a sheet, or columns by heading or letter; undefined when there is no such thing. */
export const placesNamed = (
  typed: string,
  tables: RecognisedTables,
  sheets: readonly string[],
  contentOf: (sheet: string) => SheetContent,
): NamedPlaces | undefined => {
  const whole = sheets.filter((sheet) => same(sheet, typed));
  if (whole.length > 0) return { columns: [], sheets: whole };
  const bang = typed.lastIndexOf('!');
  const heading = typed.slice(bang + 1);
  const among = bang < 0 ? undefined : sheets.find((sheet) => same(sheet, typed.slice(0, bang).replace(/^'|'$/g, '')));
  if (bang >= 0 && among === undefined) return undefined;
  const listed = headedColumns(tables).filter(
    (place) => same(place.heading, heading) && (among === undefined || place.sheet === among),
  );
  if (listed.length > 0) return { columns: listed.map(({ sheet, column }) => ({ sheet, column })), sheets: [] };
  if (among === undefined) return undefined;
  const content = contentOf(among);
  for (const line of content.values.slice(0, HEADING_ROWS)) {
    const at = line.findIndex((cell) => typeof cell === 'string' && same(cell, heading));
    if (at >= 0) return { columns: [{ sheet: among, column: content.column + at }], sheets: [] };
  }
  return /^[a-z]{1,3}$/i.test(heading) ? { columns: [{ sheet: among, column: columnOfLetters(heading) }], sheets: [] } : undefined; // prettier-ignore
};
