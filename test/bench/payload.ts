import { officeSpreadsheet } from '../../src/adapters/office/spreadsheet';
import { PlanSession } from '../../src/workbook/session';
import { demoExcel } from '../adapters/office/demo-excel';
import type { Exchange } from '../adapters/office/fake-client';

const MB = 1e6;
const largest = (exchanges: readonly Exchange[], side: keyof Exchange): number =>
  Math.max(0, ...exchanges.map((exchange) => exchange[side])) / MB;
const total = (exchanges: readonly Exchange[], side: keyof Exchange): number =>
  exchanges.reduce((sum, exchange) => sum + exchange[side], 0) / MB;

/** What opening the pane, a check and reading after an edit send to Excel on the web, which takes 5 MB at a time. */
export const run = async (root: string): Promise<void> => {
  console.log('Requests to Excel by the stand-in’s count, in MB: UTF-8 of the values and some bytes for each call');
  console.log('  channels   step               round trips   sent, largest   sent, all   got, largest   got, all');
  for (const channels of [1_000, 10_000]) {
    const excel = await demoExcel(root, channels);
    const session = new PlanSession(officeSpreadsheet(excel));
    for (const [step, work] of [
      ['open the pane', () => session.read()],
      ['check', () => session.check({})],
      ['read after it', () => session.read('edit')],
    ] as const) {
      excel.exchanges.length = 0;
      await work();
      const { exchanges } = excel;
      const figures = [largest(exchanges, 'request'), total(exchanges, 'request')];
      const answers = [largest(exchanges, 'response'), total(exchanges, 'response')];
      const cells = [...figures, ...answers].map((figure) => figure.toFixed(2));
      const line = [String(channels), `   ${step.padEnd(16)}`, String(exchanges.length), ...cells];
      console.log(line.map((cell, i) => cell.padStart([10, 19, 14, 16, 12, 15, 11][i]!)).join(''));
    }
  }
};
