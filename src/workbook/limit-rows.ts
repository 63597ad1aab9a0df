import { PURPOSES, type Purpose } from '../plan/fields';
import type { ScopedLimit } from '../plan/limits';
import { limitNamed, scopeKey } from '../plan/limits-table';
import type { SheetContent } from './port';
import { SheetCells } from './sheet-cells';
import type { RecognisedTable } from './tables';

/** A row of the limits sheet, and for which rows of the plan it holds. Rows are 0-based. */
export interface LimitRow {
  readonly row: number;
  readonly limit: ScopedLimit['limit'];
  readonly purpose?: Purpose;
  readonly group?: string;
  /** As typed, where it is not the limit's own. */
  readonly unitText?: string;
  /** A blank bound is that of the wider limit. */
  readonly bounds: readonly ('pass' | 'warn')[];
}

const textOf = (cell: unknown): string =>
  typeof cell === 'string' || typeof cell === 'number' ? String(cell).trim() : '';

/** The limits of a sheet as the plan reads them: of two for the same rows the first. */
export const limitRowsOf = (limits: RecognisedTable, content: SheetContent): readonly LimitRow[] => {
  const cells = new SheetCells(content);
  const at = (row: number, key: string): string => {
    const column = limits.columns.get(key)?.column;
    return column === undefined ? '' : textOf(cells.at(row, column));
  };
  const rows = new Map<string, LimitRow>();
  for (let row = limits.firstRow; row <= limits.lastRow; row++) {
    const named = limitNamed(at(row, 'limit'));
    const typed = at(row, 'purpose').toLowerCase();
    const purpose = PURPOSES.find((known) => known === typed);
    if (!named || (typed !== '' && !purpose) || (named.purpose && purpose && purpose !== named.purpose)) continue;
    const of = named.purpose ?? purpose;
    const group = at(row, 'group') || undefined;
    const unitText = at(row, 'limitUnit');
    const key = scopeKey(named.limit, of, group);
    if (rows.has(key)) continue;
    rows.set(key, {
      row,
      limit: named.limit,
      purpose: of,
      group,
      unitText: unitText === '' || unitText === named.unit ? undefined : unitText,
      bounds: (['pass', 'warn'] as const).filter((bound) => at(row, bound) !== ''),
    });
  }
  return [...rows.values()];
};

/** The more particular limit goes first: for a part, then for a purpose. */
export const particularity = ({ purpose, group }: Pick<LimitRow, 'purpose' | 'group'>): number =>
  (group === undefined ? 0 : 2) + (purpose === undefined ? 0 : 1);
