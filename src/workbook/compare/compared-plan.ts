import type { Cell } from '../../functions/define';
import type { ComparedPlan } from '../../plan/compare';
import type { TableName } from '../../plan/fields';
import { joinName } from '../../plan/join-name';
import { listRowOf, placeOfRow } from '../channel-lists';
import type { CellNote } from '../own-note';
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

/** A workbook that was read and judged. */
export interface WorkbookSource {
  readonly tables: RecognisedTables;
  readonly contentOf: (sheet: string) => SheetContent;
  readonly judged: JudgedPlan;
  /** Notes of people on the cells of a sheet, where they can be read. */
  readonly notesOn?: (sheet: string) => readonly CellNote[];
}

/** A cell as a person sees it typed; '' for a blank. */
export const typedText = (cell: Cell | undefined): string => {
  if (cell === null || cell === undefined) return '';
  return typeof cell === 'object' ? cell.error : String(cell);
};

export const comparedWorkbook = ({ tables, contentOf, judged }: WorkbookSource): ComparedWorkbook => {
  const ids = [...judged.byRow.keys()];
  const places = ids.flatMap((id) => placeOfRow(tables, id) ?? []);
  const items = new Map<TableName, ReadonlyMap<string, number>>();
  const rowOfItem = (table: RecognisedTable, name: string): number | undefined => {
    const known = items.get(table.table) ?? itemRows(table, contentOf(table.sheet));
    items.set(table.table, known);
    return known.get(joinName(name));
  };
  const itemAt = (table: RecognisedTable | undefined, name: string) => {
    const row = table && rowOfItem(table, name);
    return row === undefined ? undefined : { table: table!, row };
  };
  return {
    plan: judged.plan,
    checks: [...judged.byRow.values()],
    places,
    typed: (name, item, key) => {
      const found = typeof item === 'number' ? listRowOf(tables, ids[item]!) : itemAt(tables[name], item);
      const column = found?.table.columns.get(key)?.column;
      if (!found || column === undefined) return undefined;
      const { values, row: top, column: left } = contentOf(found.table.sheet);
      return typedText(values[found.row - top]?.[column - left]);
    },
    placeOfItem: (name, item) => {
      const found = itemAt(tables[name], item);
      return found && { sheet: found.table.sheet, row: found.row, column: found.table.firstColumn };
    },
  };
};

/** Keys of lists are the first field of each table; of two rows with one name the first counts. */
export const NAME_FIELDS = { channels: 'channel', sensors: 'sensor', mounts: 'mount', cables: 'cable', inputs: 'input', limits: 'limit' }; // prettier-ignore

export const itemRows = (table: RecognisedTable, { values, row: top, column: left }: SheetContent) => {
  const rows = new Map<string, number>();
  const column = table.columns.get(NAME_FIELDS[table.table])?.column;
  const skipped = new Set(table.skippedRows);
  for (let row = table.firstRow; column !== undefined && row <= table.lastRow; row++) {
    const name = skipped.has(row) ? '' : joinName(typedText(values[row - top]?.[column - left]));
    if (name !== '' && !rows.has(name)) rows.set(name, row);
  }
  return rows;
};
