import { join } from 'node:path';
import { officeSpreadsheet } from '../../../src/adapters/office/spreadsheet';
import { OWN_COLUMNS } from '../../../src/workbook/own-columns';
import { PlanSession } from '../../../src/workbook/session';
import { demoExcel } from './demo-excel';

const root = join(__dirname, '../../..');
/** Excel on the web takes and gives 5 MB at a time (Microsoft, resource limits of Office Add-ins). */
const LIMIT = 5_000_000;

/** Bytes of the largest request and answer while a list of this length is opened, checked and read again. */
const measured = async (channels: number) => {
  const excel = await demoExcel(root, channels, { requestBytes: LIMIT, responseBytes: LIMIT });
  const session = new PlanSession(officeSpreadsheet(excel));
  await session.read();
  await session.check({});
  await session.read('edit');
  const formulas = Object.values(excel.sheet('Channels').cells).filter(({ formula }) => formula !== undefined);
  return {
    formulas: formulas.length,
    request: Math.max(...excel.exchanges.map(({ request }) => request)),
    response: Math.max(...excel.exchanges.map(({ response }) => response)),
    undo: excel.undoStack.length,
  };
};

describe('a long list in Excel on the web', () => {
  let short: Awaited<ReturnType<typeof measured>>;
  let long: typeof short;
  beforeAll(async () => {
    short = await measured(1_000);
    long = await measured(2_500);
  }, 120_000);

  it('is checked whole, as one undo step', () => {
    expect([short.formulas, long.formulas]).toEqual([1_000 * OWN_COLUMNS.length, 2_500 * OWN_COLUMNS.length]);
    expect(long.undo).toBe(1);
  });

  it('needs no request near the limit', () => {
    // A real request has some more bytes around each call than the stand-in counts.
    expect(long.request).toBeLessThan(LIMIT / 2);
    expect(long.response).toBeLessThan(0.8 * LIMIT);
  });

  it('has requests that do not grow with the list, so that 10,000 channels fit as well', () => {
    expect(short.request).toBeGreaterThan(LIMIT / 10);
    expect(long.request / short.request).toBeLessThan(1.05);
    expect(long.response / short.response).toBeLessThan(1.05);
  });
});
