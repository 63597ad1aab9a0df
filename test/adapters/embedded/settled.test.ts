import { apply, openWorkbook, valuesOf, workbookOf } from './headless';

/** More formulas than the engine works off in one go, so that edits come in between. */
const ROWS = 1500;
const column = (column: number, of: (row: number) => string) => ({
  kind: 'cells' as const,
  sheet: 'Plan',
  row: 0,
  column,
  cells: Array.from({ length: ROWS }, (_, row) => [of(row + 1)]),
});
const pause = (ms: number) => new Promise((turn) => setTimeout(turn, ms));

describe('a calculation that edits interrupt', () => {
  // Longer than the engine waits before it calculates, so that the second edit stops what the first one began.
  it.each([100, 105, 130])(
    'is at its end when it is said to be, edited again after %i ms',
    async (ms) => {
      const { spreadsheet } = await openWorkbook(workbookOf(Array.from({ length: ROWS }, (_, row) => [row + 1])));
      await apply(
        spreadsheet,
        column(1, (row) => `=SUM($A$1:$A$20)*A${row}`),
      );
      await pause(ms);
      await apply(
        spreadsheet,
        column(2, (row) => `=B${row}+1`),
      );
      await pause(ms);
      await apply(
        spreadsheet,
        column(3, (row) => `=C${row}*2`),
      );
      const sums = Array.from({ length: ROWS }, (_, i) => 210 * (i + 1));
      expect(await valuesOf(spreadsheet)).toEqual(sums.map((sum, i) => [i + 1, sum, sum + 1, 2 * (sum + 1)]));
    },
    60_000,
  );
});
