import type { SheetContent } from '../../../src/workbook/port';
import { recognise } from '../../../src/workbook/recognise';
import type { RecognisedTables } from '../../../src/workbook/recognise';
import type { PlanSource } from '../../../src/workbook/choosing/what-if';
import { caseSheets } from '../case-sheets';

type Values = (string | number | null)[][];

/** The workbook of the complete cases as read, after a change by the test. */
export const readCases = (
  change: (channels: Values) => unknown = () => {},
  more: (content: SheetContent) => Partial<SheetContent> = () => ({}),
): PlanSource & { readonly tables: Required<Pick<RecognisedTables, 'channels'>> & RecognisedTables } => {
  const contents = caseSheets().map(({ name, cells }, i): SheetContent => {
    const values = cells.map((row) => [...row]) as Values;
    if (i === 0) change(values);
    const formulas = values.map((row) => row.map(() => ''));
    const content = { sheet: name, row: 0, column: 0, values, formulas, tables: [], merged: [], hiddenRows: [] };
    return i === 0 ? { ...content, ...more(content) } : content;
  });
  const tables = recognise(
    contents.map((content, i) => ({ info: { name: content.sheet, active: i === 0, visible: true }, content })),
  );
  const { channels } = tables;
  if (!channels) throw new Error('no channel list');
  const contentOf = (sheet: string) => contents.find((content) => content.sheet === sheet)!;
  return { tables: { ...tables, channels }, contentOf };
};

/** 0-based sheet row of case C1, C2, …; the headings stand in the first row. */
export const rowOfCase = (id: string): number => Number(id.slice(1));
