import type { ICellData, IWorkbookData } from '@univerjs/core';
import { openHeadless } from '../../../src/adapters/embedded/node';
import { EmbeddedSpreadsheet } from '../../../src/adapters/embedded/spreadsheet';
import type { AnyFunction, Cell } from '../../../src/functions/define';
import type { Change } from '../../../src/workbook/port';

type Typed = string | number | boolean | null;

const cellOf = (typed: NonNullable<Typed>): ICellData => {
  if (typeof typed === 'string') return typed.startsWith('=') ? { f: typed } : { v: typed, t: 1 };
  if (typeof typed === 'boolean') return { v: typed ? 1 : 0, t: 3 };
  return { v: typed, t: 2 };
};

/** A workbook with one sheet "Plan" whose cells are given row by row, as a person would type them. */
export const workbookOf = (rows: readonly (readonly Typed[])[], more: Partial<IWorkbookData> = {}): IWorkbookData => ({
  id: 'test-workbook',
  name: 'test',
  appVersion: '0.25.1',
  locale: 'enUS' as IWorkbookData['locale'],
  styles: {},
  sheetOrder: ['plan'],
  sheets: {
    plan: {
      id: 'plan',
      name: 'Plan',
      rowCount: Math.max(200, rows.length),
      columnCount: 40,
      cellData: Object.fromEntries(
        rows.map((row, r) => [
          r,
          Object.fromEntries(row.flatMap((typed, c) => (typed === null ? [] : [[c, cellOf(typed)]]))),
        ]),
      ),
    },
  },
  ...more,
});

const opened: (() => void)[] = [];
afterEach(() => {
  opened.splice(0).forEach((dispose) => dispose());
});

export const openWorkbook = async (data: IWorkbookData, functions?: readonly AnyFunction[]) => {
  const host = await openHeadless(data, functions);
  opened.push(() => host.univer.dispose());
  const spreadsheet = new EmbeddedSpreadsheet(host);
  return { ...host, spreadsheet };
};

/** The values of the sheet "Plan" once all formulas are calculated, from A1. */
export const valuesOf = async (spreadsheet: EmbeddedSpreadsheet): Promise<readonly (readonly Cell[])[]> => {
  await spreadsheet.calculated();
  return (await spreadsheet.readSheet('Plan')).values;
};

export const apply = (spreadsheet: EmbeddedSpreadsheet, ...changes: Change[]) =>
  spreadsheet.apply(changes, { label: 'test' });

/** A calculation that was stopped leaves its channel open, which would keep the process from ending. */
const channels: MessageChannel[] = [];
const Channel = globalThis.MessageChannel;
globalThis.MessageChannel = class extends Channel {
  constructor() {
    super();
    channels.push(this);
  }
};
afterAll(() => channels.forEach(({ port1 }) => port1.close()));
