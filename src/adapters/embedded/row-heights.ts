import { WrapStrategy, type Worksheet } from '@univerjs/core';
import { SetWorksheetRowHeightMutation } from '@univerjs/sheets';
import type { Change } from '../../workbook/port';
import type { Action } from './action';
import { rangeOf } from './change-beside-cells';

/** Pixels of the grid's usual letters; a word that does not fit goes to the next line, hence not quite exact. */
const LETTER = 7.4;
const LINE = 18;
const AROUND = 6;

/** Lines that the longest wrapped text of the row needs in its column. */
const linesIn = (action: Action, sheet: Worksheet, row: number): number => {
  const styles = action.services.workbook().getStyles();
  let most = 1;
  for (let column = 0; column < sheet.getColumnCount(); column++) {
    const cell = sheet.getCellRaw(row, column);
    if (typeof cell?.v !== 'string' || styles.getStyleByCell(cell)?.tb !== WrapStrategy.WRAP) continue;
    const perLine = Math.max(1, Math.floor((sheet.getColumnWidth(column) - AROUND) / LETTER));
    most = Math.max(most, Math.ceil(cell.v.length / perLine));
  }
  return most;
};

/** The grid gives rows a height only when a person types. Rows are never made lower than they are. */
export const fitRows = (action: Action, sheet: Worksheet, { row, rows }: Extract<Change, { kind: 'fit' }>): void => {
  const at = { unitId: action.unitId, subUnitId: sheet.getSheetId() };
  const before: Record<number, number> = {};
  const after: Record<number, number> = {};
  for (let r = row; r < row + rows; r++) {
    const height = linesIn(action, sheet, r) * LINE + AROUND;
    if (height <= sheet.getRowHeight(r)) continue;
    before[r] = sheet.getRowHeight(r);
    after[r] = height;
  }
  const ranges = Object.keys(after).map((r) => rangeOf({ row: Number(r), column: 0, rows: 1, columns: 1 }));
  if (ranges.length === 0) return;
  const set = (rowHeight: Record<number, number>) => ({
    id: SetWorksheetRowHeightMutation.id,
    params: { ...at, ranges, rowHeight },
  });
  action.run(set(after), [set(before)]);
};
