import { matchChannels } from '../../plan/compare-match';
import { joinName } from '../../plan/join-name';
import { TABLES, type TableName } from '../../plan/fields';
import { NAME_FIELDS, type WorkbookSource } from '../compare/compared-plan';
import { listsOf } from '../channel-lists';
import { headingsOver } from '../header-rows';
import { isOwnHeading } from '../own-columns';
import { judgePlan } from '../plan-of';
import type { SheetContent } from '../port';
import { SheetCells } from '../sheet-cells';
import { tableExtent } from '../table-extent';
import type { ColumnUse, RecognisedTable } from '../tables';
import { headedColumns } from './table-cells';

/** A header that has headings of one of the plan's lists. */
interface Found {
  readonly cells: SheetCells;
  readonly headerRow: number;
  readonly headings: ReadonlyMap<number, string>;
  readonly shared: number;
}

const ROWS_LOOKED_AT = 120;
/** Fewer common headings than this may be chance. */
const LEAST_SHARED: Readonly<Record<'named' | 'nameless', number>> = { named: 2, nameless: 4 };

/**
 * Reads a copy by the headings of the plan it came from, wherever they stand now: columns may be missing or blank, and
 * headings of ours in another language are none of them. Undefined when the channel list, or every channel of it, is not there.
 */
export const copySource = (
  { tables, judged }: Pick<WorkbookSource, 'tables' | 'judged'>,
  sheets: readonly SheetContent[],
  notesOn?: WorkbookSource['notesOn'],
): WorkbookSource | undefined => {
  const all = sheets.map((content) => new SheetCells(content));
  const taken = new Set<string>();
  const found: Partial<Record<TableName, RecognisedTable>> = {};
  for (const name of TABLES) {
    const [first, ...parts] = listsOf(tables, name).flatMap((table): RecognisedTable[] => {
      const best = bestHeader(table, all, taken);
      if (!best) return [];
      taken.add(placeOf(best));
      return [tableIn(table, best)];
    });
    if (first) found[name] = parts.length > 0 ? { ...first, parts } : first;
  }
  if (!found.channels) return undefined;
  const contentOf = (sheet: string): SheetContent => {
    const content = sheets.find((one) => one.sheet === sheet);
    if (!content) throw new Error(`no sheet ${sheet}`);
    return content;
  };
  const copy = judgePlan(found, contentOf);
  const { pairs } = matchChannels(judged.plan.channels, copy.plan.channels);
  return pairs.length === 0 ? undefined : { tables: found, contentOf, judged: copy, notesOn };
};

const placeOf = ({ cells, headerRow }: Found): string => `${headerRow} ${cells.content.sheet}`;

const bestHeader = (
  table: RecognisedTable,
  all: readonly SheetCells[],
  taken: ReadonlySet<string>,
): Found | undefined => {
  const wanted = new Set([...table.headings.values()].map(joinName));
  const nameHeading = table.columns.get(NAME_FIELDS[table.table])?.heading;
  const sameSheet = (cells: SheetCells) => Number(cells.content.sheet === table.sheet);
  let best: Found | undefined;
  for (const cells of [...all].sort((a, b) => sameSheet(b) - sameSheet(a)))
    for (let row = cells.firstRow; row < Math.min(cells.endRow, cells.firstRow + ROWS_LOOKED_AT); row++) {
      const headings = headingsOver(cells, row, table.headerRows, cells.firstColumn, cells.endColumn, isOwnHeading);
      const texts = new Set([...headings.values()].map(joinName));
      const shared = [...wanted].filter((heading) => texts.has(heading)).length;
      const isNamed = nameHeading !== undefined && texts.has(joinName(nameHeading));
      if (shared < (isNamed ? LEAST_SHARED.named : LEAST_SHARED.nameless) || shared <= (best?.shared ?? 0)) continue;
      const header = { cells, headerRow: row, headings, shared };
      if (!taken.has(placeOf(header))) best = header;
    }
  return best;
};

const tableIn = (table: RecognisedTable, { cells, headerRow, headings }: Found): RecognisedTable => {
  const copy = { ...table, headings, columns: new Map<string, ColumnUse>() };
  const places = new Map(headedColumns(copy).map(({ name, column }) => [name, column]));
  const mapped = headedColumns(table).flatMap(({ name }) => places.get(name) ?? []);
  const columns = headedColumns(table).flatMap(({ name, key }): [string, ColumnUse][] => {
    const column = places.get(name);
    return key === undefined || column === undefined ? [] : [[key, { ...table.columns.get(key)!, column }]];
  });
  const listObject = cells.content.tables.find(({ range }) => range.row === headerRow);
  const lastRow = listObject && listObject.range.row + listObject.range.rows - 1;
  const header = { cells, headerRow, headerRows: table.headerRows, headings: new Map(mapped.map((c) => [c, headings.get(c)!])), known: 0, lastRow }; // prettier-ignore
  return {
    ...copy,
    sheet: cells.content.sheet,
    headerRow,
    ...tableExtent(header, mapped, new Set()),
    firstColumn: Math.min(...mapped),
    lastColumn: Math.max(...mapped),
    columns: new Map(columns),
    unsure: new Map(),
    listObject: listObject?.name,
    further: undefined,
    parts: undefined,
  };
};
