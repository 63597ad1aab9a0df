import { ErrorType, LexerTreeBuilder } from '@univerjs/engine-formula';
import type { IWorkbookData } from '@univerjs/core';
import { createHeadless } from '../../adapters/embedded/node';
import { openInGrid } from '../../adapters/embedded/open';
import { EmbeddedSpreadsheet } from '../../adapters/embedded/spreadsheet';
import type { Cell } from '../../functions/define';

/** Away from the corner, so that A1 in a formula is an empty cell and not the formula itself. */
const PLACE = { row: 1000, column: 100 };
/** Room for what a formula fills: larger blocks show #SPILL! as on any full sheet. */
const ROWS = PLACE.row + 2000;
const COLUMNS = PLACE.column + 256;

export interface Evaluated {
  /** Undefined when the text is no formula. */
  readonly block?: readonly (readonly Cell[])[];
}

const sheetOf = (id: string, formula: string) => ({
  id,
  name: id,
  rowCount: ROWS,
  columnCount: COLUMNS,
  cellData: { [PLACE.row]: { [PLACE.column]: { f: formula } } },
});

/** Each formula alone on an empty sheet, calculated by the embedded spreadsheet's engine. */
export const evaluateAll = async (formulas: readonly string[]): Promise<readonly Evaluated[]> => {
  const host = createHeadless();
  try {
    const lexer = host.univer.__getInjector().get(LexerTreeBuilder);
    const isFormula = (formula: string): boolean => {
      const tree = lexer.treeBuilder(formula);
      return formula.trim() !== '=' && (typeof tree !== 'string' || !Object.values<string>(ErrorType).includes(tree));
    };
    const ids = formulas.map((formula, i) => (isFormula(formula) ? `formula-${i + 1}` : undefined));
    const used = ids.filter((id) => id !== undefined);
    if (used.length === 0) return formulas.map(() => ({}));
    const workbook: Partial<IWorkbookData> = {
      id: 'formulas',
      name: 'formulas',
      sheetOrder: used,
      styles: {},
      sheets: Object.fromEntries(ids.flatMap((id, i) => (id ? [[id, sheetOf(id, formulas[i]!)]] : []))),
    };
    await openInGrid(host.api, workbook as IWorkbookData);
    const spreadsheet = new EmbeddedSpreadsheet(host);
    await spreadsheet.calculated();
    const results: Evaluated[] = [];
    for (const id of ids) results.push(id === undefined ? {} : { block: (await spreadsheet.readSheet(id)).values });
    return results;
  } finally {
    host.univer.dispose();
  }
};
