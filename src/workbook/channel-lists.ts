import type { TableName } from '../plan/fields';
import type { Place } from './plan-view';
import type { PlanTables } from './row-sources';
import type { RecognisedTable } from './tables';

/** Rows of a plan are told apart by one number, also where its channel list is spread over several sheets. */
const ROWS_OF_A_SHEET = 2 ** 20;

type WithChannels = { readonly channels?: RecognisedTable };

/** The channel list, sheet by sheet; most plans have one. */
export const channelLists = ({ channels }: WithChannels): readonly RecognisedTable[] =>
  channels ? [channels, ...(channels.parts ?? [])] : [];

export const channelSheets = (tables: WithChannels): readonly string[] =>
  channelLists(tables).map(({ sheet }) => sheet);

export const isSpread = (tables: WithChannels): boolean => channelLists(tables).length > 1;

/** The number of a 0-based row of one of the lists; on the first list it is the row itself. */
export const rowIdOf = (list: number, row: number): number => list * ROWS_OF_A_SHEET + row;

export interface ListRow {
  readonly list: number;
  readonly table: RecognisedTable;
  /** 0-based, on the list's sheet. */
  readonly row: number;
}
export const listRowOf = (tables: WithChannels, id: number): ListRow | undefined => {
  const list = Math.floor(id / ROWS_OF_A_SHEET);
  const table = channelLists(tables)[list];
  return table && { list, table, row: id % ROWS_OF_A_SHEET };
};

export const channelCountOf = ({ firstRow, lastRow, skippedRows }: RecognisedTable): number =>
  lastRow - firstRow + 1 - skippedRows.length;

/** The tables as one of the lists sees them: the rows that are looked at, and the lists they look things up in. */
export const tablesOfEachList = (tables: PlanTables): readonly PlanTables[] =>
  channelLists(tables).map((list) => ({ ...tables, channels: list }));

/** Rows, or what belongs to them, list by list, under their rows on the sheet. */
export const byList = <T extends { readonly row: number }>(
  tables: WithChannels,
  items: readonly T[],
): readonly { readonly list: number; readonly table: RecognisedTable; readonly items: readonly T[] }[] => {
  const found = new Map<number, { list: number; table: RecognisedTable; items: T[] }>();
  for (const item of items) {
    const at = listRowOf(tables, item.row);
    if (!at) continue;
    const { list, table, row } = at;
    const own = found.get(list) ?? { list, table, items: [] };
    own.items.push({ ...item, row });
    found.set(list, own);
  }
  return [...found.values()].sort((a, b) => a.list - b.list);
};

/** What of a plan stands on one list, by the rows of its sheet. */
export const onList = <T>(byRow: ReadonlyMap<number, T>, list: number): ReadonlyMap<number, T> =>
  new Map(
    [...byRow]
      .filter(([id]) => Math.floor(id / ROWS_OF_A_SHEET) === list)
      .map(([id, held]) => [id % ROWS_OF_A_SHEET, held]),
  );

/** All tables of one kind. */
export const listsOf = (
  tables: Readonly<Partial<Record<TableName, RecognisedTable>>>,
  name: TableName,
): readonly RecognisedTable[] => {
  const table = tables[name];
  return name === 'channels' ? channelLists(tables) : table ? [table] : [];
};

/** The cell that names the channel of a row. */
export const placeOfRow = (tables: WithChannels, id: number): Place | undefined => {
  const at = listRowOf(tables, id);
  if (!at) return undefined;
  const { table, row } = at;
  return { sheet: table.sheet, row, column: table.columns.get('channel')?.column ?? table.firstColumn };
};
