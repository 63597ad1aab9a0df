import { joinName } from '../../plan/join-name';
import { TITLES } from '../../plan/words/titles';
import { fieldByKey } from '../../plan/fields';
import type { AsRead, Change, SheetContent } from '../port';
import { inert } from '../summary';
import type { ReturnedCell } from './returned-cells';

/** Which cells a person wants. Without names: all that need no care. */
export interface Wanted {
  readonly channels?: readonly string[];
  readonly fields?: readonly string[];
}

const namesOf = ({ key, table, heading }: ReturnedCell): readonly string[] =>
  [
    heading,
    ...(key === undefined ? [] : [key, fieldByKey(table, key).title, TITLES.de[table][key], TITLES.fr[table][key]]),
  ].flatMap((name) => (name === undefined ? [] : [joinName(name)]));

/** What is asked for by channel and by field is taken whatever stands there; otherwise only what needs no care. */
export const wantedCells = (cells: readonly ReturnedCell[], { channels, fields }: Wanted): readonly ReturnedCell[] => {
  const [items, names] = [channels, fields].map((list) => list && new Set(list.map(joinName)));
  return cells.filter((cell) => {
    if (items && !items.has(joinName(cell.item))) return false;
    if (names && !namesOf(cell).some((name) => names.has(name))) return false;
    return (items && names) || cell.cares.length === 0;
  });
};

type CellsChange = Extract<Change, { kind: 'cells' }>;

/** The cells to write. Texts from outside stay texts: nothing of them becomes a formula. */
export const takenChanges = (cells: readonly ReturnedCell[]): readonly CellsChange[] => {
  const changes: (CellsChange & { cells: (number | string | boolean | null)[][] })[] = [];
  const inOrder = [...cells].sort(
    (a, b) => a.at.sheet.localeCompare(b.at.sheet) || a.at.column - b.at.column || a.at.row - b.at.row,
  );
  for (const { at, returned } of inOrder) {
    const value = typeof returned === 'string' && returned.trim() === '' ? null : returned;
    const typed = value === null ? null : inert(value);
    const last = changes.at(-1);
    if (last && last.sheet === at.sheet && last.column === at.column && last.row + last.cells.length === at.row)
      last.cells.push([typed]);
    else changes.push({ kind: 'cells', ...at, cells: [[typed]] });
  }
  return changes;
};

/** What these cells hold as the list was made, so that a host refuses when somebody has changed them since. */
export const asReadOf = (
  changes: readonly CellsChange[],
  contentOf: (sheet: string) => SheetContent,
): readonly AsRead[] =>
  changes.map(({ sheet, row, column, cells }) => {
    const { values, formulas, row: top, column: left } = contentOf(sheet);
    return {
      sheet,
      row,
      column,
      cells: cells.map((_, i) => {
        const formula = formulas[row + i - top]?.[column - left] ?? '';
        const value = values[row + i - top]?.[column - left] ?? null;
        return [formula !== '' ? formula : typeof value === 'object' && value !== null ? value.error : value];
      }),
    };
  });
