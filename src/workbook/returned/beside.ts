import { LANGUAGES } from '../../core/language';
import { VERDICTS } from '../../core/verdict';
import { isCellError, type Cell } from '../../functions/define';
import { joinName } from '../../plan/join-name';
import { isOwnHeading } from '../own-columns';
import type { CellNote } from '../own-note';
import type { Place } from '../plan-view';
import type { SheetContent } from '../port';
import { sharedHeadings } from '../share/own-headings';
import type { RecognisedTable } from '../tables';
import { isSameCell } from './same-cell';
import { cellAt, headedColumns } from './table-cells';

/** What somebody wrote in the copy where the plan has no column for it: a remark, an answer. */
export interface Beside {
  /** In the copy. */
  readonly at: Place;
  /** The channel, or the item of a list. */
  readonly item: string;
  /** Blank where the column has none; of a note that of its cell. */
  readonly heading: string;
  readonly text: Exclude<Cell, null | { readonly error: string }>;
  readonly isNote?: true;
}

const ours = new Set(LANGUAGES.flatMap((language) => sharedHeadings(language).map(joinName)));
const isOurs = (heading: string): boolean => {
  const plain = heading.replace(/ \*$/, '');
  return isOwnHeading(plain) || ours.has(joinName(plain));
};

/** A row of the plan and the same in the copy, and in the copy as it left where that is known. */
export interface BesideRow {
  readonly item: string;
  readonly own: TableRow;
  readonly other: TableRow;
  readonly sent?: TableRow;
}
interface TableRow {
  readonly table: RecognisedTable;
  readonly row: number;
}
type ContentOf = (sheet: string) => SheetContent;

/** Headings of ours are no headings of the list. */
const headingAt = (table: RecognisedTable, content: SheetContent, column: number): string => {
  const typed = cellAt(content, table.headerRow + table.headerRows - 1, column);
  return table.headings.get(column) ?? (typeof typed === 'string' ? typed : '');
};

/** Columns of the copy of which neither the plan nor we know anything, with their headings. */
const columnsBeside = (own: RecognisedTable, other: RecognisedTable, content: SheetContent) => {
  const known = new Set(headedColumns(own).map(({ name }) => name));
  const names = new Map(headedColumns(other).map(({ column, name }) => [column, name]));
  return Array.from({ length: content.values[0]?.length ?? 0 }, (_, i) => content.column + i).flatMap((column) => {
    const name = names.get(column);
    const heading = headingAt(other, content, column);
    return (name !== undefined && known.has(name)) || isOurs(heading) ? [] : [{ column, heading }];
  });
};

const rowOf = ({ values, row: top }: SheetContent, row: number): readonly Cell[] => values[row - top] ?? [];

/** What stands in the rows of a copy beside the list; not what the plan has in the same row, or the copy as it left had. */
export const besideRows = (
  rows: readonly BesideRow[],
  contents: { readonly plan: ContentOf; readonly returned: ContentOf; readonly sent?: ContentOf },
): readonly Beside[] => {
  const columns = new Map<RecognisedTable, ReturnType<typeof columnsBeside>>();
  return rows.flatMap(({ item, own, other, sent }) => {
    const { sheet } = other.table;
    const content = contents.returned(sheet);
    const found = columns.get(other.table) ?? columnsBeside(own.table, other.table, content);
    columns.set(other.table, found);
    const before = [
      ...rowOf(contents.plan(own.table.sheet), own.row),
      ...(sent && contents.sent ? rowOf(contents.sent(sent.table.sheet), sent.row) : []),
    ];
    return found.flatMap(({ column, heading }): Beside[] => {
      const text = cellAt(content, other.row, column);
      if (text === null || isCellError(text) || (typeof text === 'string' && text.trim() === '')) return [];
      if (before.some((cell) => isSameCell(cell, text))) return [];
      return [{ at: { sheet, row: other.row, column }, item, heading, text }];
    });
  });
};

const OUR_LINE = new RegExp(`^(?:${VERDICTS.join('|')}): |: (?:${VERDICTS.join('|')})$`);
/** What somebody added to a note of ours; some programs forget who wrote it. */
const withoutOurs = (text: string): string =>
  text
    .split(/\r?\n/)
    .filter((line) => !OUR_LINE.test(line.trim()))
    .join('\n')
    .trim();

type NotesOn = ((sheet: string) => readonly CellNote[]) | undefined;

/** Notes that somebody put on the rows of a copy; not those that left with it. */
export const besideNotes = (
  rows: readonly BesideRow[],
  contentOf: ContentOf,
  { plan, returned, sent }: { readonly plan: NotesOn; readonly returned: NotesOn; readonly sent?: NotesOn },
): readonly Beside[] => {
  const byRow = new Map(rows.map((row) => [`${row.other.row} ${row.other.table.sheet}`, row]));
  const textsOn = (notesOn: NotesOn, sheet: string | undefined) =>
    sheet === undefined ? [] : (notesOn?.(sheet) ?? []).map(({ text }) => text);
  const known = new Set(
    [...new Set(rows.map(({ own }) => own.table.sheet))]
      .flatMap((sheet) => textsOn(plan, sheet))
      .concat([...new Set(rows.map((row) => row.sent?.table.sheet))].flatMap((sheet) => textsOn(sent, sheet))),
  );
  return [...new Set(rows.map(({ other }) => other.table.sheet))].flatMap((sheet) =>
    (returned?.(sheet) ?? []).flatMap(({ row, column, text }): Beside[] => {
      const found = byRow.get(`${row} ${sheet}`);
      if (!found || known.has(text)) return [];
      const heading = headingAt(found.other.table, contentOf(sheet), column);
      const said = isOurs(heading) ? withoutOurs(text) : text;
      if (said === '') return [];
      return [{ at: { sheet, row, column }, item: found.item, heading, text: said, isNote: true }];
    }),
  );
};
