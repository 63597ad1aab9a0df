import type { Cell } from '../../functions/define';
import { joinName } from '../../plan/join-name';
import { isOwnHeading } from '../own-columns';
import type { SheetContent } from '../port';
import type { RecognisedTable } from '../tables';

/** A column that two lists are compared by: the heading, and which of several with one heading it is. */
export interface HeadedColumn {
  readonly column: number;
  readonly heading: string;
  readonly name: string;
  /** Field of the plan that the column holds. */
  readonly key?: string;
}

/** The user's columns of a list. Headings are compared as texts: a unit that differs makes another column. */
export const headedColumns = ({ headings, columns }: RecognisedTable): readonly HeadedColumn[] => {
  const keys = new Map([...columns].map(([key, { column }]) => [column, key]));
  const seen = new Map<string, number>();
  return [...headings]
    .sort(([a], [b]) => a - b)
    .flatMap(([column, heading]): HeadedColumn[] => {
      const folded = joinName(heading);
      if (folded === '' || isOwnHeading(heading)) return [];
      const count = (seen.get(folded) ?? 0) + 1;
      seen.set(folded, count);
      return [{ column, heading, name: `${folded}\n${count}`, key: keys.get(column) }];
    });
};

export const cellAt = ({ values, row: top, column: left }: SheetContent, row: number, column: number): Cell =>
  values[row - top]?.[column - left] ?? null;
export const formulaAt = ({ formulas, row: top, column: left }: SheetContent, row: number, column: number): string =>
  formulas[row - top]?.[column - left] ?? '';
