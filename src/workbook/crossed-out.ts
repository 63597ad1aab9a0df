import { fieldsOf, TABLES } from '../plan/fields';
import { listsOf } from './channel-lists';
import type { Spreadsheet } from './port';
import type { RecognisedTables, SheetToRead } from './recognise';

/** The sheets with what is crossed out in their lists, from a host that tells it on request; undefined if nothing is. */
export const withCrossedOut = async (
  spreadsheet: Spreadsheet,
  sheets: readonly SheetToRead[],
  tables: RecognisedTables,
): Promise<SheetToRead[] | undefined> => {
  if (!spreadsheet.crossedOut) return undefined;
  const lists = TABLES.flatMap((name) => listsOf(tables, name))
    .filter(({ firstRow, lastRow }) => lastRow >= firstRow)
    .map((list) => {
      const { sheet, firstRow, lastRow, firstColumn, lastColumn } = list;
      const range = {
        row: firstRow,
        column: firstColumn,
        rows: lastRow - firstRow + 1,
        columns: lastColumn - firstColumn + 1,
      };
      return { sheet, range, by: list.columns.get(fieldsOf(list.table)[0]!.key)?.column ?? firstColumn };
    });
  const crossed = lists.length > 0 ? await spreadsheet.crossedOut(lists) : undefined;
  if (!crossed?.size) return undefined;
  return sheets.map(({ info, content }) => ({ info, content: { ...content, crossedOut: crossed.get(info.name) } }));
};
