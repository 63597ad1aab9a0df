import { isCellError, type Cell } from '../../functions/define';
import { matchChannels } from '../../plan/compare-match';
import { TABLES, type TableName } from '../../plan/fields';
import { itemRows, NAME_FIELDS, type WorkbookSource } from '../compare/compared-plan';
import { listRowOf } from '../channel-lists';
import type { Place } from '../plan-view';
import type { RecognisedTable } from '../tables';
import { isSameCell } from './same-cell';
import { besideNotes, besideRows, type Beside } from './beside';
import { cellAt, formulaAt, headedColumns, type HeadedColumn } from './table-cells';

/** Why a cell is taken only when it is asked for by name. */
export type Care = 'formula' | 'conflict' | 'renamed';

/** A cell that the returned copy has otherwise than the plan. */
export interface ReturnedCell {
  readonly at: Place;
  readonly table: TableName;
  /** The channel, or the item of a list. */
  readonly item: string;
  readonly heading: string;
  readonly key?: string;
  /** What stands in the plan now, and the formula that gives it. */
  readonly now: Cell;
  readonly formula: string;
  /** What left with the copy, where that is known. */
  readonly sent?: Cell;
  readonly returned: Exclude<Cell, { readonly error: string }>;
  readonly cares: readonly Care[];
}

/** What came back with a copy. Nothing of it is in the plan yet. */
export interface Returned {
  readonly cells: readonly ReturnedCell[];
  /** Rows that only the copy has, and rows that it has no more. */
  readonly added: readonly string[];
  readonly missing: readonly string[];
  /** Columns of the plan that the copy does not have. */
  readonly columnsMissing: readonly string[];
  /** Cells of the copy that hold an error value or a formula without one: they say nothing. */
  readonly unreadable: readonly string[];
  /** What the customer wrote where the plan has no column for it. */
  readonly beside: readonly Beside[];
  /** Cells that only the plan changed since the copy left. */
  readonly oursNewer: number;
}

interface TableRow {
  readonly table: RecognisedTable;
  readonly row: number;
}
interface RowPair {
  readonly item: string;
  readonly own: TableRow;
  readonly other: TableRow;
  readonly isRename: boolean;
}
interface PairedRows {
  readonly pairs: readonly RowPair[];
  readonly added: readonly string[];
  readonly missing: readonly string[];
}

/**
 * Finds the cells of the user's columns that a copy has otherwise than the plan. Columns are found by their headings,
 * rows by channel or by the name of the item; with the copy as it left, cells changed on both sides are conflicts.
 */
export const returnedCells = (plan: WorkbookSource, returned: WorkbookSource, sent?: WorkbookSource): Returned => {
  const found = TABLES.flatMap((name) =>
    plan.tables[name] && returned.tables[name] ? [tableCells(name, plan, returned, sent)] : [],
  );
  const all = <T>(of: (table: Returned) => readonly T[]): readonly T[] => found.flatMap(of);
  return {
    cells: all(({ cells }) => cells),
    added: all(({ added }) => added),
    missing: all(({ missing }) => missing),
    columnsMissing: [...new Set(all(({ columnsMissing }) => columnsMissing))],
    unreadable: all(({ unreadable }) => unreadable),
    beside: all(({ beside }) => beside),
    oursNewer: found.reduce((sum, { oursNewer }) => sum + oursNewer, 0),
  };
};

/** The user's columns of a list, by their names; made once per list. */
const columnsByList = () => {
  const known = new Map<RecognisedTable, ReadonlyMap<string, HeadedColumn>>();
  return (table: RecognisedTable): ReadonlyMap<string, HeadedColumn> => {
    const columns = known.get(table) ?? new Map(headedColumns(table).map((column) => [column.name, column]));
    known.set(table, columns);
    return columns;
  };
};

const tableCells = (
  name: TableName,
  plan: WorkbookSource,
  returned: WorkbookSource,
  sent: WorkbookSource | undefined,
): Returned => {
  const { pairs, added, missing } = pairedRows(name, plan, returned);
  const columnsOf = columnsByList();
  const sentRow = sent?.tables[name] && sentRows(name, plan, sent);
  const sentCell = sent && sentRow && sentCells(sent, sentRow);
  const cells: ReturnedCell[] = [];
  const unreadable: string[] = [];
  const columnsMissing = new Set<string>();
  let oursNewer = 0;
  for (const { item, own, other, isRename } of pairs) {
    const [content, otherContent] = [plan.contentOf(own.table.sheet), returned.contentOf(other.table.sheet)];
    const others = columnsOf(other.table);
    for (const [columnName, { column, heading, key }] of columnsOf(own.table)) {
      const otherColumn = others.get(columnName)?.column;
      if (otherColumn === undefined) {
        columnsMissing.add(heading);
        continue;
      }
      const now = cellAt(content, own.row, column);
      const value = cellAt(otherContent, other.row, otherColumn);
      if (isSameCell(now, value)) continue;
      const before = sentCell?.(own, columnName);
      if (before !== undefined && isSameCell(before, value)) {
        oursNewer++;
        continue;
      }
      if (isCellError(value) || (value === null && formulaAt(otherContent, other.row, otherColumn) !== '')) {
        unreadable.push(`${item}, ${heading}`);
        continue;
      }
      const formula = formulaAt(content, own.row, column);
      const cares: Care[] = [
        ...(formula === '' ? [] : ['formula' as const]),
        ...(before === undefined || isSameCell(before, now) ? [] : ['conflict' as const]),
        ...(isRename ? ['renamed' as const] : []),
      ];
      const at = { sheet: own.table.sheet, row: own.row, column };
      cells.push({ at, table: name, item, heading, key, now, formula, sent: before, returned: value, cares });
    }
  }
  const rows = pairs.map(({ item, own, other }) => ({ item, own, other, sent: sentRow?.(own) }));
  const beside = [
    ...besideRows(rows, { plan: plan.contentOf, returned: returned.contentOf, sent: sent?.contentOf }),
    ...besideNotes(rows, returned.contentOf, { plan: plan.notesOn, returned: returned.notesOn, sent: sent?.notesOn }),
  ];
  return { cells, added, missing, columnsMissing: [...columnsMissing], unreadable, beside, oursNewer };
};

/** Rows of the copy as it left, by the plan's row. */
const sentRows = (name: TableName, plan: WorkbookSource, sent: WorkbookSource) => {
  const keyOf = ({ table, row }: TableRow): string => `${row} ${table.sheet}`;
  const rows = new Map(pairedRows(name, plan, sent).pairs.map(({ own, other }) => [keyOf(own), other]));
  return (own: TableRow): TableRow | undefined => rows.get(keyOf(own));
};

/** Cells of the copy as it left, by the plan's row and the column's name; undefined where the copy had none. */
const sentCells = (sent: WorkbookSource, rowOf: ReturnType<typeof sentRows>) => {
  const columnsOf = columnsByList();
  return (own: TableRow, columnName: string): Cell | undefined => {
    const other = rowOf(own);
    const column = other && columnsOf(other.table).get(columnName)?.column;
    return column === undefined ? undefined : cellAt(sent.contentOf(other!.table.sheet), other!.row, column);
  };
};

const pairedRows = (name: TableName, plan: WorkbookSource, returned: WorkbookSource): PairedRows =>
  name === 'channels' ? pairedChannels(plan, returned) : pairedItems(name, plan, returned);

const pairedChannels = (plan: WorkbookSource, returned: WorkbookSource): PairedRows => {
  const [own, other] = [plan, returned].map(({ tables, judged }) => ({
    channels: judged.plan.channels,
    rows: [...judged.byRow.keys()].map((id) => listRowOf(tables, id)!),
  }));
  const { pairs, added, removed } = matchChannels(own!.channels, other!.channels);
  return {
    pairs: [...pairs]
      .sort((a, b) => a.before - b.before)
      .map(({ before, after, isRename }) => ({
        item: own!.channels[before]!.id,
        own: own!.rows[before]!,
        other: other!.rows[after]!,
        isRename,
      })),
    added: added.map((place) => other!.channels[place]!.id),
    missing: removed.map((place) => own!.channels[place]!.id),
  };
};

const pairedItems = (name: TableName, plan: WorkbookSource, returned: WorkbookSource): PairedRows => {
  const [own, other] = [plan, returned].map((source) => {
    const table = source.tables[name]!;
    const content = source.contentOf(table.sheet);
    const column = table.columns.get(NAME_FIELDS[name])?.column ?? table.firstColumn;
    const typed = (row: number): string => String(cellAt(content, row, column) ?? '');
    return { table, rows: itemRows(table, content), typed };
  });
  return {
    pairs: [...own!.rows].flatMap(([item, row]): RowPair[] => {
      const there = other!.rows.get(item);
      if (there === undefined) return [];
      return [{ item: own!.typed(row), own: { table: own!.table, row }, other: { table: other!.table, row: there }, isRename: false }]; // prettier-ignore
    }),
    added: [...other!.rows].flatMap(([item, row]) => (own!.rows.has(item) ? [] : [other!.typed(row)])),
    missing: [...own!.rows].flatMap(([item, row]) => (other!.rows.has(item) ? [] : [own!.typed(row)])),
  };
};
