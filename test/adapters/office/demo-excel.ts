import { join } from 'node:path';
import { openFile } from '../../../src/adapters/xlsx/file-on-disk';
import { isCellError, type Cell } from '../../../src/functions/define';
import { FakeExcel } from './fake-excel';
import { blankSheet } from './fake-workbook';
import type { Limits } from './fake-client';

const HEADINGS = 4;

/** The channel list repeated under other names up to a number of rows. */
const repeated = (values: readonly (readonly Cell[])[], channels: number): Cell[][] => {
  const rows = values.slice(HEADINGS + 1);
  const list = Array.from({ length: channels }, (_, i) => {
    const [name, ...rest] = rows[i % rows.length]!;
    return [`${String(name)}-${Math.floor(i / rows.length)}`, ...rest];
  });
  return [...values.slice(0, HEADINGS + 1).map((row) => [...row]), ...list];
};

/** A stand-in for Excel with the demo plan open, made as long as asked. */
export const demoExcel = async (root: string, channels: number, limits?: Limits): Promise<FakeExcel> => {
  const file = await openFile(join(root, 'assets/demo-plan.xlsx'), []);
  const excel = new FakeExcel(undefined, limits);
  excel.state.sheets = file.sheets.map(({ name }) => blankSheet(name));
  excel.state.active = 'Channels';
  for (const { name } of file.sheets) {
    const { values, tables, row, column } = file.readSheet(name);
    const cells = name === 'Channels' ? repeated(values, channels) : values;
    // A text stays a text, as in the file; a typed one might become a number.
    const entries = cells.map((line) =>
      line.map((cell) => (typeof cell === 'string' ? `'${cell}` : isCellError(cell) ? cell.error : cell)),
    );
    excel.fill(name, row, column, entries);
    excel.sheet(name).tables.push(...tables);
  }
  return excel;
};
