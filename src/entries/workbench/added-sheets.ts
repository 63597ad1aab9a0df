import type { FileChange } from '../../adapters/xlsx/changes';
import { cellDifferences } from '../../workbook/cell-differences';
import type { RangeAddress, SheetContent } from '../../workbook/port';
import { usedRange } from '../../workbook/summary';
import type { WholeSheet } from '../../workbook/whole-sheet';
import { blocksOf } from './cell-blocks';

const EVERYTHING: RangeAddress = { row: 0, column: 0, rows: Infinity, columns: Infinity };
const EMPTY = { row: 0, column: 0, values: [], formulas: [], tables: [], merged: [], hiddenRows: [] };

/** What has to be written so that a sheet of the file holds what is shown, whoever wrote it. */
export const cellsAsShown = (
  file: SheetContent,
  { content, spills }: { readonly content: SheetContent; readonly spills: readonly RangeAddress[] },
): FileChange[] => {
  const comparison = { file, grid: content, opened: content, spills, own: EVERYTHING };
  return blocksOf(content.sheet, cellDifferences({ ...comparison, wasWritten: () => true }));
};

/** Cells, looks and all that belongs to them, on a sheet that has nothing yet. */
const contents = (whole: WholeSheet): FileChange[] => {
  const { content, looks, notes, marks, drawings } = whole;
  const { sheet } = content;
  return [
    ...cellsAsShown({ ...EMPTY, sheet }, whole),
    ...looks.map(({ range, look }): FileChange => ({ kind: 'look', sheet, range, look })),
    ...notes.map((note): FileChange => ({ kind: 'note', sheet, ...note })),
    ...(marks.length > 0 ? [{ kind: 'marks', sheet, rules: marks } as const] : []),
    ...(drawings ? [{ kind: 'drawings', sheet, drawings } as const] : []),
  ];
};

/** A sheet that the file does not have. */
export const addedSheet = (whole: WholeSheet): FileChange[] => [
  { kind: 'sheet', name: whole.content.sheet, frame: whole.frame },
  ...contents(whole),
];

/** Padding that a width in a file counts besides its digits, in digits of seven pixels (ECMA-376-1, 18.3.1.13). */
const PADDING = 5 / 7;

/** A sheet of ours that was written anew since the file was opened: nothing of what it held before is left over. */
export const renewedSheet = (whole: WholeSheet, file: SheetContent): FileChange[] => {
  const { sheet } = whole.content;
  const before = usedRange(file);
  const rows = whole.content.row + whole.content.values.length;
  const widths = [...(whole.frame.columns ?? [])].flatMap(([column, { width }]): FileChange[] =>
    width === undefined ? [] : [{ kind: 'width', sheet, column, columns: 1, characters: width - PADDING }],
  );
  return [
    ...(before ? [{ kind: 'clear', sheet, range: before } as const] : []),
    // Notes of others stand in the file already.
    ...contents({ ...whole, notes: whole.notes.filter(({ isOurs }) => isOurs) }),
    ...widths,
    ...(rows > 0 ? [{ kind: 'fit', sheet, row: 0, rows } as const] : []),
    ...(whole.marks.length === 0 ? [{ kind: 'marks', sheet, rules: [] } as const] : []),
  ];
};
