import type { OwnSheet } from './chart-parts';
import type { Package } from './package';
import { heightFor, setHeights } from './fit-rows';
import { addFramedSheet, printedFrame, type SheetPrint } from './sheet-frame';

/** Adds the empty summary sheet of a copy, printed as asked. */
export const addSummarySheet = (pkg: Package, workbook: string, name: string, print: SheetPrint): void =>
  addFramedSheet(pkg, workbook, name, printedFrame(print));

/** Gives the rows of a block from `from` on the height that its wrapped texts need in columns of these widths. */
export const fitHeights = (
  pkg: Package,
  { part }: OwnSheet,
  cells: readonly (readonly unknown[])[],
  widths: readonly number[],
  from: number,
): void => {
  const heightOf = (line: readonly unknown[]) =>
    heightFor(widths.map((width, i) => [String(line[i] ?? ''), width] as const));
  setHeights(pkg, part, new Map(cells.map((line, i) => [from + i, heightOf(line)])));
};
