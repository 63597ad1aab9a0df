import type { CrossedOut, RangeAddress } from '../../workbook/port';
import { rowsPerRequest } from './batch';

const STRUCK: Excel.CellPropertiesLoadOptions = { format: { font: { strikethrough: true } } };
const ROWS_PER_REQUEST = rowsPerRequest(1);

interface Asked {
  readonly sheet: string;
  readonly range: RangeAddress;
}

/** Asks for blocks in pieces that each fit into one answer; a row counts by its columns. */
const struckCells = async (
  context: Excel.RequestContext,
  asked: readonly Asked[],
  tell: (sheet: string, row: number, column: number) => void,
): Promise<void> => {
  let waiting: { at: Asked; answer: OfficeExtension.ClientResult<Excel.CellProperties[][]> }[] = [];
  let cells = 0;
  const send = async () => {
    if (waiting.length > 0) await context.sync();
    for (const { at, answer } of waiting)
      answer.value.forEach((line, i) =>
        line.forEach(({ format }, k) => {
          if (format?.font?.strikethrough === true) tell(at.sheet, at.range.row + i, at.range.column + k);
        }),
      );
    waiting = [];
    cells = 0;
  };
  for (const { sheet, range } of asked) {
    const step = rowsPerRequest(range.columns);
    for (let done = 0; done < range.rows; done += step) {
      const rows = Math.min(step, range.rows - done);
      if (cells > 0 && cells + rows * range.columns > ROWS_PER_REQUEST) await send();
      const part = { row: range.row + done, column: range.column, rows, columns: range.columns };
      const place = context.workbook.worksheets.getItem(sheet);
      const block = place.getRangeByIndexes(part.row, part.column, part.rows, part.columns);
      waiting.push({ at: { sheet, range: part }, answer: block.getCellProperties(STRUCK) });
      cells += rows * range.columns;
    }
  }
  await send();
};

/** Neighbouring rows as one block each. */
const blocksOf = (rows: readonly number[], { column, columns }: RangeAddress): RangeAddress[] => {
  const blocks: { row: number; rows: number }[] = [];
  for (const row of [...rows].sort((a, b) => a - b)) {
    const last = blocks.at(-1);
    if (last && last.row + last.rows === row) last.rows++;
    else blocks.push({ row, rows: 1 });
  }
  return blocks.map((block) => ({ ...block, column, columns }));
};

const add = (found: Map<number, number[]>, row: number, column: number) =>
  void (found.get(row)?.push(column) ?? found.set(row, [column]));

/** Looks at one column of each list, and at whole rows only where that column is crossed out. */
export const readCrossedOut = async (
  context: Excel.RequestContext,
  lists: readonly (Asked & { readonly by: number })[],
): Promise<CrossedOut> => {
  const named: Asked[] = lists.map(({ sheet, range, by }) => ({ sheet, range: { ...range, column: by, columns: 1 } }));
  const rowsOf = new Map<string, number[]>();
  const key = (sheet: string, column: number) => `${column} ${sheet}`;
  await struckCells(context, named, (sheet, row, column) => {
    const at = key(sheet, column);
    rowsOf.set(at, [...(rowsOf.get(at) ?? []), row]);
  });
  const whole = lists.flatMap(({ sheet, range, by }) => {
    const rows = (rowsOf.get(key(sheet, by)) ?? []).filter((row) => row >= range.row && row < range.row + range.rows);
    return blocksOf(rows, range).map((block) => ({ sheet, range: block }));
  });
  const crossed = new Map<string, Map<number, number[]>>();
  await struckCells(context, whole, (sheet, row, column) => {
    const found = crossed.get(sheet) ?? new Map<number, number[]>();
    add(found, row, column);
    crossed.set(sheet, found);
  });
  return crossed;
};
