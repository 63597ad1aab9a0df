import { isCellError } from '../../functions/define';
import { findOwnBlock, OWN_COLUMNS } from '../own-columns';
import type { ApplyOptions, SheetContent, Spreadsheet } from '../port';
import { cellBlocks, type Entry, type PlacedEntry } from './cell-blocks';
import { cellsOf, everySheet, type PlacedCell } from './every-sheet';
import { mayFillCells, usesOwnFunctions } from './own-calls';

/** The check columns only, or every cell whose formula uses a function of ours. */
export type FreezeScope = 'check columns' | 'every formula';
/** Why a formula stays: its error would be lost, it may fill cells beside it, or its text could not stay a text. */
export type Staying = 'error' | 'fills cells' | 'reads as a formula';

export interface FreezePlan {
  readonly scope: FreezeScope;
  readonly values: readonly (PlacedEntry & { readonly formula: string })[];
  readonly staying: readonly { readonly sheet: string; readonly row: number; readonly column: number; why: Staying }[];
}

/** Whether a cell is in our block: under our headings, in a row in which the block has a formula of ours. */
const ownPlaces = (content: SheetContent): ((row: number, column: number) => boolean) => {
  const blocks = content.values.flatMap((values, r) => {
    const found = findOwnBlock(values);
    return found.kind === 'whole' ? [{ row: r, column: found.column }] : [];
  });
  const blockOf = content.formulas.map((formulas, r) => {
    const block = blocks.filter(({ row }) => row < r).at(-1);
    const cells = block && formulas.slice(block.column, block.column + OWN_COLUMNS.length);
    return cells?.some(usesOwnFunctions) ? block : undefined;
  });
  return (row, column) => {
    const block = blockOf[row - content.row];
    const at = column - content.column;
    return block !== undefined && at >= block.column && at < block.column + OWN_COLUMNS.length;
  };
};

/** A formula over a range may fill the cells right of it or below; then these hold values and no formula. */
const hasFilledNeighbour = (content: SheetContent, { row, column, formula }: PlacedCell): boolean => {
  if (!/:/.test(formula.replace(/"(?:[^"]|"")*"/g, ''))) return false;
  const filled = (r: number, c: number): boolean => {
    const value = content.values[r - content.row]?.[c - content.column] ?? null;
    return value !== null && (content.formulas[r - content.row]?.[c - content.column] ?? '') === '';
  };
  return filled(row + 1, column) || filled(row, column + 1);
};

const stayingOf = (content: SheetContent, cell: PlacedCell, isOwn: boolean): Staying | undefined => {
  if (isCellError(cell.value)) return 'error';
  if (typeof cell.value === 'string' && cell.value.startsWith('=')) return 'reads as a formula';
  return !isOwn && (mayFillCells(cell.formula) || hasFilledNeighbour(content, cell)) ? 'fills cells' : undefined;
};

/** What would become values, and what would stay. Changes nothing. */
export const planFreeze = async (spreadsheet: Spreadsheet, scope: FreezeScope): Promise<FreezePlan> => {
  const values: FreezePlan['values'][number][] = [];
  const staying: FreezePlan['staying'][number][] = [];
  for (const content of await everySheet(spreadsheet)) {
    const isOwnPlace = ownPlaces(content);
    for (const cell of cellsOf(content)) {
      const { sheet, row, column, value, formula } = cell;
      if (formula === '') continue;
      const isOwn = isOwnPlace(row, column);
      if (scope === 'check columns' ? !isOwn : !isOwn && !usesOwnFunctions(formula)) continue;
      const why = stayingOf(content, cell, isOwn);
      if (why) staying.push({ sheet, row, column, why });
      else values.push({ sheet, row, column, formula, entry: (value ?? '') as Entry });
    }
  }
  return { scope, values, staying };
};

/** Puts the values in place of the formulas as one action. Looks, marks and notes stay; "Check" brings formulas back. */
export const freezeToValues = async (
  spreadsheet: Spreadsheet,
  { values }: FreezePlan,
  options: ApplyOptions,
): Promise<number> => {
  if (values.length === 0) return 0;
  await spreadsheet.apply(cellBlocks(values), {
    ...options,
    asRead: cellBlocks(values.map(({ formula, ...at }) => ({ ...at, entry: formula }))),
  });
  await spreadsheet.calculated();
  return values.length;
};
