import { cellAddress } from '../../workbook/address';
import type { RangeAddress } from '../../workbook/port';
import { holds, overlap } from './cell-reference';
import type { FormulaNames } from './formula-names';
import { referencesIn } from './formula-text';
import type { Package } from './package';
import { SharedFormulas } from './sheet-read';
import { walkSheet } from './sheet-walk';
import type { SheetEntry } from './workbook-part';

const MOST_REPORTED = 1000;

/** Addresses (Sheet!A1) of formulas outside the touched ranges that refer into them. */
export function dependentsOf(
  pkg: Package,
  sheets: readonly SheetEntry[],
  touched: readonly { readonly sheet: string; readonly range: RangeAddress }[],
  names: FormulaNames,
): readonly string[] {
  const found: string[] = [];
  if (touched.length === 0) return found;
  for (const { name, part } of sheets) {
    const shared = new SharedFormulas();
    // Outside the touched ranges the sheet is as it was, and an edited one would have to be unpacked whole.
    walkSheet(pkg.readOriginal(part) ?? pkg.read(part), part, {
      cell(cell) {
        if (!cell.formula || found.length >= MOST_REPORTED) return;
        if (cell.formula.type === 'shared') shared.expand(cell.formula, cell.row, cell.column);
        if (touched.some(({ sheet, range }) => sheet === name && holds(range, cell.row, cell.column))) return;
        const formula = shared.expand(cell.formula, cell.row, cell.column);
        if (names.isOwn(formula)) return;
        const reads = referencesIn(formula).some((reference) =>
          touched.some(
            ({ sheet, range }) =>
              sheet.toLowerCase() === (reference.sheet ?? name).toLowerCase() && overlap(range, reference.range),
          ),
        );
        if (reads) found.push(`${name}!${cellAddress(cell.row, cell.column)}`);
      },
    });
  }
  return found;
}
