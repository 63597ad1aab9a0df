import { isCellError, type Cell } from '../../functions/define';
import type { SheetContent } from '../../workbook/port';
import { overlap } from './cell-reference';
import type { Package } from './package';
import { refuse } from './refuse';
import { resolve } from './sheet-effects';
import type { SheetPlan } from './sheet-plan';
import { tablesOf, updateTables } from './tables';

/** Keeps the tables of a sheet in step with the changes to its cells. */
export function updateTablesOf(pkg: Package, plan: SheetPlan, read: () => SheetContent): void {
  const sheet = plan.sheet.name;
  const tables = tablesOf(pkg, plan.sheet.part);
  for (const name of plan.tableColumns.keys())
    if (!tables.some((table) => table.name === name)) refuse('not-found', `Sheet ${sheet} has no table ${name}.`);
  if (tables.length === 0) return;
  for (const effect of plan.effects) {
    const table =
      effect.kind === 'write' && effect.spills ? tables.find(({ range }) => overlap(range, effect.range)) : undefined;
    if (table) refuse('unsupported', `Inside table ${table.name} a formula cannot fill several cells.`);
  }
  let content: SheetContent | undefined;
  const present = (row: number, column: number): string => {
    content ??= read();
    return headingText(content.values[row - content.row]?.[column - content.column] ?? null);
  };
  const changed = (row: number, column: number): string | null | undefined => {
    const input = resolve(plan.effects, row, column)?.input;
    if (input === undefined || input === null) return input;
    if (input.kind === 'constant') return headingText(input.value);
    return refuse('unsupported', `The heading of a table on sheet ${sheet} must be a text, not a formula.`);
  };
  updateTables(pkg, sheet, tables, plan.tableColumns, changed, present);
}

const headingText = (cell: Cell): string => (cell === null || isCellError(cell) ? '' : String(cell));
