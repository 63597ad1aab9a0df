import type { IWorkbookData } from '@univerjs/core';
import type { CaseSheet } from './case-sheets';

/** Sheets of typed cells as a workbook of the embedded spreadsheet; the first is the active one. */
export const workbookData = (sheets: readonly CaseSheet[]): IWorkbookData => ({
  id: 'cases',
  name: 'cases',
  appVersion: '0.25.1',
  locale: 'enUS' as IWorkbookData['locale'],
  styles: {},
  sheetOrder: sheets.map(({ name }) => name),
  sheets: Object.fromEntries(
    sheets.map(({ name, cells }) => [
      name,
      {
        id: name,
        name,
        rowCount: cells.length + 40,
        columnCount: 60,
        cellData: Object.fromEntries(
          cells.map((row, r) => [
            r,
            Object.fromEntries(
              row.flatMap((typed, c) =>
                typed === null ? [] : [[c, { v: typed, t: typeof typed === 'number' ? 2 : 1 }] as const],
              ),
            ),
          ]),
        ),
      },
    ]),
  ),
});
