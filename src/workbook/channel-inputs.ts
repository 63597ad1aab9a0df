import type { Language } from '../core/language';
import { fieldByKey, fieldsOf, type TableName } from '../plan/fields';
import { fieldTitle } from '../plan/words/titles';
import { listRowOf } from './channel-lists';
import type { ChannelInputs } from './channel-page';
import type { JudgedPlan } from './plan-of';
import type { SheetContent } from './port';
import type { RecognisedTables } from './recognise';
import { isoDate } from './report/supply-sections';
import type { RecognisedTable } from './tables';

const PARTS: readonly (readonly [table: TableName, key: 'sensor' | 'mount' | 'cable' | 'input'])[] = [
  ['sensors', 'sensor'],
  ['mounts', 'mount'],
  ['cables', 'cable'],
  ['inputs', 'input'],
];

export interface JudgedSource {
  readonly tables: RecognisedTables;
  readonly contentOf: (sheet: string) => SheetContent;
  readonly judged: JudgedPlan;
}

/** What stands in the channel's row and in the rows of the parts that it names. */
export const channelInputs = (
  { tables, contentOf, judged }: JudgedSource,
  id: number,
  language: Language,
): readonly ChannelInputs[] => {
  const { named = {}, sensor } = judged.byRow.get(id)?.channel ?? {};
  // The row of the type is also that of one of its pieces, and seldom of this one.
  const isOfAPiece = (table: RecognisedTable, key: string): boolean =>
    table.table === 'sensors' && sensor?.pieces !== undefined && (key === 'serial' || key === 'calibrationDue');
  const textAt = (table: RecognisedTable, at: number, key: string): string => {
    const isDate = fieldByKey(table.table, key).kind === 'date';
    const content = contentOf(table.sheet);
    const use = table.columns.get(key);
    const cell = use && content.values[at - content.row]?.[use.column - content.column];
    if (cell === null || cell === undefined) return '';
    if (isDate && typeof cell === 'number') return isoDate(cell);
    return typeof cell === 'object' ? cell.error : `${String(cell)}${use?.unitText && typeof cell === 'number' ? ` ${use.unitText}` : ''}`; // prettier-ignore
  };
  const rowNamed = (table: RecognisedTable, key: string, name: string): number | undefined => {
    for (let at = table.firstRow; at <= table.lastRow; at++)
      if (textAt(table, at, key).trim().toLowerCase() === name.trim().toLowerCase()) return at;
    return undefined;
  };
  const cellsOf = (table: RecognisedTable, at: number) =>
    fieldsOf(table.table).flatMap(({ key }) => {
      const typed = isOfAPiece(table, key) ? '' : textAt(table, at, key);
      return typed === '' ? [] : [[fieldTitle(table.table, key, language), typed] as const];
    });
  const lists = PARTS.flatMap(([name, key]) => {
    const table = tables[name];
    const part = named[key];
    const at = table && part !== undefined ? rowNamed(table, key, part) : undefined;
    return table && at !== undefined ? [{ title: table.sheet, cells: cellsOf(table, at) }] : [];
  });
  const own = listRowOf(tables, id);
  return [...(own ? [{ title: own.table.sheet, cells: cellsOf(own.table, own.row) }] : []), ...lists];
};
