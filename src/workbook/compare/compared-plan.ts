import type { Cell } from '../../functions/define';
import type { ComparedPlan } from '../../plan/compare';
import type { TableName } from '../../plan/fields';
import { joinName } from '../../plan/from-tables';
import type { JudgedPlan } from '../plan-of';
import type { Place } from '../plan-view';
import type { SheetContent } from '../port';
import type { RecognisedTables } from '../recognise';
import type { RecognisedTable } from '../tables';

/** A plan in a workbook, ready to be compared, with the place of each channel. */
export interface ComparedWorkbook extends ComparedPlan {
  readonly places: readonly Place[];
  /** The row of a list's item; undefined where the list has none of that name. */
  readonly placeOfItem: (table: TableName, name: string) => Place | undefined;
}

interface Source {
  readonly tables: RecognisedTables;
  readonly contentOf: (sheet: string) => SheetContent;
  readonly judged: JudgedPlan;
}

/** A cell as a person sees it typed; '' for a blank. */
export const typedText = (cell: Cell | undefined): string => {
  if (cell === null || cell === undefined) return '';
  return typeof cell === 'object' ? cell.error : String(cell);
};

export const comparedWorkbook = ({ tables, contentOf, judged }: Source): ComparedWorkbook => {
  const { channels } = tables;
  const nameColumn = channels?.columns.get('channel')?.column ?? channels?.firstColumn ?? 0;
  const places = [...judged.byRow.keys()].map((row) => ({ sheet: channels?.sheet ?? '', row, column: nameColumn }));
  const items = new Map<TableName, ReadonlyMap<string, number>>();
  const rowOfItem = (table: RecognisedTable, name: string): number | undefined => {
    const known = items.get(table.table) ?? itemRows(table, contentOf(table.sheet));
    items.set(table.table, known);
    return known.get(joinName(name));
  };
  return {
    plan: judged.plan,
    checks: [...judged.byRow.values()],
    places,
    typed: (name, item, key) => {
      const table = tables[name];
      const column = table?.columns.get(key)?.column;
      if (!table || column === undefined) return undefined;
      const row = typeof item === 'number' ? places[item]?.row : rowOfItem(table, item);
      const { values, row: top, column: left } = contentOf(table.sheet);
      return row === undefined ? undefined : typedText(values[row - top]?.[column - left]);
    },
    placeOfItem: (name, item) => {
      const table = tables[name];
      const row = table && rowOfItem(table, item);
      return row === undefined ? undefined : { sheet: table!.sheet, row, column: table!.firstColumn };
    },
  };
};

/** Keys of lists are the first field of each table; of two rows with one name the first counts. */
const KEYS = { channels: 'channel', sensors: 'sensor', mounts: 'mount', cables: 'cable', inputs: 'input', limits: 'limit' }; // prettier-ignore

export const itemRows = (table: RecognisedTable, { values, row: top, column: left }: SheetContent) => {
  const rows = new Map<string, number>();
  const column = table.columns.get(KEYS[table.table])?.column;
  const skipped = new Set(table.skippedRows);
  for (let row = table.firstRow; column !== undefined && row <= table.lastRow; row++) {
    const name = skipped.has(row) ? '' : joinName(typedText(values[row - top]?.[column - left]));
    if (name !== '' && !rows.has(name)) rows.set(name, row);
  }
  return rows;
};
