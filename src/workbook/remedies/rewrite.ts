import { isCellError } from '../../functions/define';
import type { ApplyOptions, Spreadsheet } from '../port';
import { cellBlocks } from './cell-blocks';
import { cellsOf, everySheet, type PlacedCell } from './every-sheet';
import { namedCalls, respelt } from './own-calls';

/**
 * `broken`: shows #NAME? and names our functions. `perhaps`: the same, but under a name that may be somebody else's.
 * `text`: a text that reads like a formula of ours.
 */
export type Suspicion = 'broken' | 'perhaps' | 'text';
export interface BrokenFormula {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly suspicion: Suspicion;
  readonly before: string;
  readonly after: string;
}

const suspicionOf = ({ value, formula }: PlacedCell): Suspicion | undefined => {
  const isText = formula === '' && typeof value === 'string' && /^[=@]/.test(value.trim());
  const showsNoName = isCellError(value) && value.error === '#NAME?';
  if (!isText && !(formula !== '' && showsNoName)) return undefined;
  const kinds = namedCalls(isText ? String(value) : formula).map(({ kind }) => kind);
  if (!kinds.some((kind) => kind !== 'unknown to this version')) return undefined;
  if (isText) return kinds.includes('perhaps ours') ? undefined : 'text';
  return kinds.includes('perhaps ours') ? 'perhaps' : 'broken';
};

/** Formulas of ours that show an unknown name, and texts that look like one. Changes nothing. */
export const findBroken = async (spreadsheet: Spreadsheet): Promise<readonly BrokenFormula[]> => {
  const found: BrokenFormula[] = [];
  for (const content of await everySheet(spreadsheet))
    for (const cell of cellsOf(content)) {
      const suspicion = suspicionOf(cell);
      if (suspicion === undefined) continue;
      const { sheet, row, column, value, formula } = cell;
      const before = suspicion === 'text' ? String(value) : formula;
      const written = before.trim().replace(/^[=@\s]+/, '');
      found.push({ sheet, row, column, suspicion, before, after: `=${respelt(written)}` });
    }
  return found;
};

/** Why a formula that was written again still gives no value. */
export type Remainder = 'unknown name' | 'other error' | 'not taken';
export interface Rewritten {
  readonly count: number;
  readonly working: number;
  readonly failing: readonly (BrokenFormula & { readonly why: Remainder; readonly shows: string })[];
}

const remainderOf = (cell: PlacedCell | undefined): { why: Remainder; shows: string } | undefined => {
  if (!cell || cell.formula === '') return { why: 'not taken', shows: String(cell?.value ?? '') };
  if (!isCellError(cell.value)) return undefined;
  return { why: cell.value.error === '#NAME?' ? 'unknown name' : 'other error', shows: cell.value.error };
};

/** Writes the chosen formulas again as one action, so that the host reads their names afresh, and looks what came of it. */
export const rewriteFormulas = async (
  spreadsheet: Spreadsheet,
  chosen: readonly BrokenFormula[],
  options: ApplyOptions,
): Promise<Rewritten> => {
  if (chosen.length === 0) return { count: 0, working: 0, failing: [] };
  await spreadsheet.apply(cellBlocks(chosen.map(({ after, ...at }) => ({ ...at, entry: after }))), {
    ...options,
    asRead: cellBlocks(chosen.map(({ before, ...at }) => ({ ...at, entry: before }))),
  });
  await spreadsheet.calculated();
  const now = new Map<string, PlacedCell>();
  for (const name of new Set(chosen.map(({ sheet }) => sheet)))
    for (const cell of cellsOf(await spreadsheet.readSheet(name)))
      now.set(JSON.stringify([name, cell.row, cell.column]), cell);
  const failing = chosen.flatMap((formula) => {
    const left = remainderOf(now.get(JSON.stringify([formula.sheet, formula.row, formula.column])));
    return left ? [{ ...formula, ...left }] : [];
  });
  return { count: chosen.length, working: chosen.length - failing.length, failing };
};
