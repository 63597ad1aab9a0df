import { cellAddress } from '../../workbook/address';
import { HostProblem, type AsRead } from '../../workbook/port';
import { rowsPerRequest } from './batch';
import { sameName } from './preflight';

/** What a cell is given and what it then says are the same but for a blank, and an apostrophe that keeps a text a text. */
const same = (read: AsRead['cells'][number][number], now: unknown): boolean =>
  read === now ||
  (typeof read === 'string' && now === `'${read}`) ||
  ((read === null || read === '') && (now === null || now === undefined || now === ''));

const ranges = function* (asRead: readonly AsRead[]): Generator<AsRead> {
  for (const { cells, row, ...rest } of asRead) {
    const step = rowsPerRequest(cells[0]?.length ?? 0);
    for (let from = 0; from < cells.length; from += step)
      yield { ...rest, row: row + from, cells: cells.slice(from, from + step) };
  }
};

/** As many areas as one request compares: a call costs more than a cell. */
const AREAS_PER_REQUEST = 500;
const CELLS_PER_REQUEST = 20_000;

/** Refuses when somebody moved or changed what was read, for what is written would then land in other rows. */
export const refuseChanged = async (
  context: Excel.RequestContext,
  sheets: ReadonlyMap<string, Excel.Worksheet>,
  asRead: readonly AsRead[],
): Promise<void> => {
  let asked: { part: AsRead; range: Excel.Range }[] = [];
  let cells = 0;
  const compare = async () => {
    if (asked.length > 0) await context.sync();
    for (const { part, range } of asked)
      part.cells.forEach((line, i) =>
        line.forEach((read, k) => {
          const formulas = range.formulas as unknown[][];
          if (same(read, formulas[i]?.[k])) return;
          const at = cellAddress(part.row + i, part.column + k);
          throw new HostProblem(
            `${part.sheet}!${at} no longer holds what it held when the sheet was read: somebody moved or changed rows. Nothing was changed. Read the workbook again, then repeat.`,
            'changed',
          );
        }),
      );
    asked = [];
    cells = 0;
  };
  for (const part of ranges(asRead)) {
    const [rows, columns] = [part.cells.length, part.cells[0]?.length ?? 0];
    const sheet = sheets.get(sameName(part.sheet)) ?? context.workbook.worksheets.getItem(part.sheet);
    if (rows * columns === 0) continue;
    if (asked.length >= AREAS_PER_REQUEST || cells + rows * columns > CELLS_PER_REQUEST) await compare();
    const range = sheet.getRangeByIndexes(part.row, part.column, rows, columns);
    range.load('formulas');
    asked.push({ part, range });
    cells += rows * columns;
  }
  await compare();
};
