import { wrap } from '../../core/wrap';
import type { RangeAddress } from '../../workbook/port';
import type { Package } from './package';
import { resolve } from './sheet-effects';
import type { SheetPlan } from './sheet-plan';
import { Splice } from './splice';
import { child, childrenOf, parseTree } from './xml-tree';

export const POINTS_PER_LINE = 13.5;
const POINTS_BESIDE = 2;
/** A column that shows so many digits shows about a tenth more letters of running text. */
export const LETTERS_PER_DIGIT = 1.1;

/** Height of a row whose wrapped texts stand in columns of these widths. */
export const heightFor = (texts: readonly (readonly [text: string, width: number])[]): number => {
  const lines = texts.map(([text, width]) => wrap(text, width * LETTERS_PER_DIGIT).length);
  return Math.max(1, ...lines) * POINTS_PER_LINE + POINTS_BESIDE;
};

/** Gives rows their heights, takes them where they are undefined, and leaves rows that are not named. */
export const setHeights = (pkg: Package, part: string, heights: ReadonlyMap<number, number | undefined>): void => {
  const bytes = pkg.read(part);
  const splice = new Splice(bytes);
  for (const row of childrenOf(child(parseTree(bytes, part), 'sheetData'), 'row')) {
    const at = Number(row.attributes.get('r')) - 1;
    if (!heights.has(at)) continue;
    const height = heights.get(at)?.toString();
    if (row.attributes.get('ht') === height) continue;
    // Attributes come in front of those that are there, so the later one first.
    splice.setAttribute(row, 'customHeight', height && '1');
    splice.setAttribute(row, 'ht', height);
  }
  if (!splice.isEmpty) pkg.write(part, splice.apply());
};

/**
 * Gives rows the height that the texts need which an action writes and wraps in columns whose widths it sets, for not
 * every program works it out when it opens a file. Rows that it clears get their usual height.
 */
export const fitRows = (pkg: Package, plan: SheetPlan): void => {
  const { effects, widths, fits, sheet } = plan;
  if (fits.length === 0 || widths.length === 0) return;
  const heights = new Map<number, number | undefined>();
  for (const effect of effects)
    if (effect.kind === 'clear') for (const row of rowsOf(effect.range)) heights.set(row, undefined);
  for (const { row: first, rows } of fits)
    for (let row = first; row < first + rows; row++) {
      const texts = widths.flatMap(({ column, columns, characters }) =>
        Array.from({ length: columns }, (_, i) => [wrappedText(plan, row, column + i), characters] as const),
      );
      heights.set(row, heightFor(texts));
    }
  setHeights(pkg, sheet.part, heights);
};

const rowsOf = ({ row, rows }: RangeAddress): number[] => Array.from({ length: rows }, (_, i) => row + i);

const wrappedText = ({ effects }: SheetPlan, row: number, column: number): string => {
  const state = resolve(effects, row, column);
  return state?.look?.wrap === true && state.input?.kind === 'constant' ? String(state.input.value) : '';
};
