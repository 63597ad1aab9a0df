import type { ICommandInfo, IExecutionOptions, IRange } from '@univerjs/core';
import {
  InsertColMutation,
  InsertRowMutation,
  InsertSheetMutation,
  MoveColsMutation,
  MoveRangeMutation,
  MoveRowsMutation,
  RemoveColMutation,
  RemoveRowMutation,
  RemoveSheetMutation,
  ReorderRangeMutation,
  SetRangeValuesMutation,
  SetSelectionsOperation,
  SetWorksheetNameMutation,
  type ISetSelectionsOperationParams,
} from '@univerjs/sheets';
import type { RangeAddress } from '../../workbook/port';
import { isOwnChange } from './action';
import type { Services } from './host';
import { addressOf } from './read-sheet';

interface SheetChange {
  sheet: string;
  range: RangeAddress;
}

/** Changes after which any cell of the sheet may be another one. */
const STRUCTURE: ReadonlySet<string> = new Set(
  [
    InsertColMutation,
    InsertRowMutation,
    InsertSheetMutation,
    MoveColsMutation,
    MoveRangeMutation,
    MoveRowsMutation,
    RemoveColMutation,
    RemoveRowMutation,
    RemoveSheetMutation,
    ReorderRangeMutation,
    SetWorksheetNameMutation,
  ].map(({ id }) => id),
);

const CONTENT = ['v', 'f', 'si', 'p'];

/** The cells whose content a change touches; a change of looks touches none. */
const contentRange = (cellValue: object | undefined): IRange | undefined => {
  let range: IRange | undefined;
  for (const [row, cells] of Object.entries(cellValue ?? {}))
    for (const [column, cell] of Object.entries((cells ?? {}) as object)) {
      if (cell && !CONTENT.some((key) => key in (cell as object))) continue;
      const [r, c] = [Number(row), Number(column)];
      range ??= { startRow: r, startColumn: c, endRow: r, endColumn: c };
      range.startRow = Math.min(range.startRow, r);
      range.startColumn = Math.min(range.startColumn, c);
      range.endRow = Math.max(range.endRow, r);
      range.endColumn = Math.max(range.endColumn, c);
    }
  return range;
};

interface ChangeParams {
  subUnitId?: string;
  cellValue?: object;
}

const changeOf = (services: Services, { id, params }: ICommandInfo): SheetChange | undefined => {
  const { subUnitId, cellValue } = (params ?? {}) as ChangeParams;
  const workbook = services.openWorkbook();
  const sheet = (subUnitId && workbook?.getSheetBySheetId(subUnitId)) || workbook?.getActiveSheet();
  if (!sheet) return undefined;
  if (STRUCTURE.has(id)) {
    const range = { row: 0, column: 0, rows: sheet.getRowCount(), columns: sheet.getColumnCount() };
    return { sheet: sheet.getName(), range };
  }
  const range = id === SetRangeValuesMutation.id ? contentRange(cellValue) : undefined;
  return range && { sheet: sheet.getName(), range: addressOf(range) };
};

/** What the engine writes for itself: results of formulas, and formulas that moved. */
const isEngine = (options: IExecutionOptions | undefined): boolean =>
  options?.onlyLocal === true || options?.['applyFormulaCalculationResult'] === true;

/** Calls back after a person changed cells, also by undoing or redoing. Our own changes stay silent. */
export const listenForChanges = (services: Services, listener: (change: SheetChange) => void): (() => void) => {
  const registration = services.commands.onCommandExecuted((command, options) => {
    if (isEngine(options) || isOwnChange(command.params)) return;
    if (!STRUCTURE.has(command.id) && command.id !== SetRangeValuesMutation.id) return;
    const change = changeOf(services, command);
    if (change) listener(change);
  });
  return () => registration.dispose();
};

/** Calls back when other cells are selected. The grid's own event is lost when another workbook takes its place. */
export const listenForSelections = (services: Services, listener: (at: SheetChange) => void): (() => void) => {
  const registration = services.commands.onCommandExecuted(({ id, params }) => {
    if (id !== SetSelectionsOperation.id) return;
    const { subUnitId, selections } = params as ISetSelectionsOperationParams;
    const sheet = services.openWorkbook()?.getSheetBySheetId(subUnitId);
    const range = selections[selections.length - 1]?.range;
    if (sheet && range) listener({ sheet: sheet.getName(), range: addressOf(range) });
  });
  return () => registration.dispose();
};
