import { officeSpreadsheet } from '../../../src/adapters/office/spreadsheet';
import { FakeExcel } from './fake-excel';

const ROWS = 50_000;
const COLUMNS = 20;

const excelWith = (rows: readonly number[], columns = COLUMNS) => {
  const excel = new FakeExcel();
  for (const row of rows)
    for (let column = 0; column < columns; column++)
      excel.sheet('Sheet1').looks[`${row},${column}`] = { isStruck: true };
  return excel;
};
const ask = (excel: FakeExcel) =>
  officeSpreadsheet(excel).crossedOut!([
    { sheet: 'Sheet1', range: { row: 1, column: 0, rows: ROWS, columns: COLUMNS }, by: 0 },
  ]);

describe('what is crossed out in a long list in Excel', () => {
  it('is asked of one column, and of whole rows only where that column says so', async () => {
    const excel = excelWith([7, 8, 30_000]);
    const crossed = (await ask(excel)).get('Sheet1')!;
    expect([...crossed.keys()]).toEqual([7, 8, 30_000]);
    expect(crossed.get(8)).toEqual(Array.from({ length: COLUMNS }, (_, column) => column));
    // Three pieces of the column, one for the three rows; the stand-in counts about 50 bytes for a cell.
    expect(excel.roundTrips).toBe(4);
    expect(Math.max(...excel.exchanges.map(({ response }) => response))).toBeLessThan(2_500_000);
  });

  it('costs nothing more where nothing is', async () => {
    const excel = excelWith([]);
    expect((await ask(excel)).size).toBe(0);
    expect(excel.roundTrips).toBe(3);
  });

  it('is never a row of which only the name is', async () => {
    const crossed = await ask(excelWith([9], 1));
    expect(crossed.get('Sheet1')!.get(9)).toEqual([0]);
  });

  it('stays under the limit of an answer when every row is', async () => {
    const excel = excelWith(Array.from({ length: 3_000 }, (_, i) => i + 1));
    expect((await ask(excel)).get('Sheet1')!.size).toBe(3_000);
    expect(Math.max(...excel.exchanges.map(({ response }) => response))).toBeLessThan(2_500_000);
  });
});
