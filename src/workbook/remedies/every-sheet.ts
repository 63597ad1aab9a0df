import type { Cell } from '../../functions/define';
import type { SheetContent, Spreadsheet } from '../port';

/** All sheets, hidden ones too: a formula that does not work is no better for being out of sight. */
export const everySheet = async (spreadsheet: Spreadsheet): Promise<readonly SheetContent[]> => {
  const contents: SheetContent[] = [];
  for (const { name } of await spreadsheet.sheets()) contents.push(await spreadsheet.readSheet(name));
  return contents;
};

export interface PlacedCell {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly value: Cell;
  /** With its "=", or '' where the cell has none. */
  readonly formula: string;
}

export function* cellsOf(content: SheetContent): Generator<PlacedCell> {
  for (const [r, values] of content.values.entries())
    for (const [c, value] of values.entries()) {
      const formula = content.formulas[r]?.[c] ?? '';
      if (value !== null || formula !== '')
        yield { sheet: content.sheet, row: content.row + r, column: content.column + c, value, formula };
    }
}
