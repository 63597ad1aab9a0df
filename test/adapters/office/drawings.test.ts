import { officeSpreadsheet } from '../../../src/adapters/office/spreadsheet';
import type { BarChart } from '../../../src/workbook/charts';
import { OWN_DRAWING, type PlacedPlot } from '../../../src/workbook/drawings';
import type { Change } from '../../../src/workbook/port';
import { FakeExcel, OLDEST } from './fake-excel';

const options = { label: 'Check' };
const column = (c: number) => ({ row: 6, column: c, rows: 4, columns: 1 });
const chart: BarChart = {
  title: 'Check',
  valueTitle: 'Channels',
  categories: column(0),
  labels: ['Level', 'Mass', 'Thermal', 'Frequency'],
  series: [
    { name: { row: 5, column: 2 }, values: column(2), verdict: 'FAIL', caption: 'FAIL', numbers: [1, 2, 0, 0] },
    { name: { row: 5, column: 3 }, values: column(3), verdict: 'PASS', caption: 'PASS', numbers: [3, 2, 4, 4] },
  ],
  place: { row: 2, column: 0, x: 100, width: 358, height: 336 },
};
const plot: PlacedPlot = {
  plot: { width: 380, height: 120, title: 'Level ladder', inWords: 'Signal to noise 13 dB, WARN.', marks: [] },
  place: { row: 3, column: 0, x: 0, width: 380, height: 120 },
};
const drawn = (drawings: readonly (BarChart | PlacedPlot)[]): Change[] => [
  { kind: 'sheet', name: 'Overview', reading: { foot: 'Page &P of &N' } },
  { kind: 'drawings', sheet: 'Overview', drawings },
];

it('a chart refers to the cells that it draws and stands where the page has left room, in points', async () => {
  const excel = new FakeExcel();
  await officeSpreadsheet(excel).apply(drawn([chart]), options);
  const [made] = excel.sheet('Overview').drawings;
  expect(made).toMatchObject({ type: 'Chart', chart: 'BarStacked', name: `${OWN_DRAWING}1` });
  expect(made!.series).toEqual([
    { name: 'FAIL', values: column(2), categories: column(0), colour: '#b23a0e' },
    { name: 'PASS', values: column(3), categories: column(0), colour: '#a9cbe3' },
  ]);
  // A pixel of 1/96 inch is three quarters of a point; two rows of 15 points lie above, and 4 pixels.
  expect(made!.looks).toEqual({ title: 'Check', valueTitle: 'Channels', left: 75, top: 33, width: 268.5, height: 252 });
});

it('a plot is a picture with its words as alternative text, in the oldest Excel that is accepted too', async () => {
  const excel = new FakeExcel(OLDEST);
  await officeSpreadsheet(excel).apply(drawn([plot]), options);
  const [made] = excel.sheet('Overview').drawings;
  expect(made).toMatchObject({
    type: 'Image',
    looks: { words: 'Level ladder. Signal to noise 13 dB, WARN.', top: 48 },
  });
  expect(made!.png).not.toBe('');
});

it('what somebody else drew on the sheet stays when ours is replaced', async () => {
  const excel = new FakeExcel();
  const spreadsheet = officeSpreadsheet(excel);
  await spreadsheet.apply(drawn([chart, plot]), options);
  const theirs = [
    { type: 'Chart' as const, name: 'Chart 7', looks: {}, series: [] },
    { type: 'Image' as const, name: 'Logo', looks: {}, series: [] },
    { type: 'GeometricShape' as const, name: `${OWN_DRAWING}copied`, looks: {}, series: [] },
  ];
  excel.sheet('Overview').drawings.push(...theirs);
  await spreadsheet.apply(drawn([plot]), options);
  expect(excel.sheet('Overview').drawings).toEqual([...theirs, expect.objectContaining({ type: 'Image' })]);
});

it('a sheet for reading is set up for print, and made all the same where no printer is', async () => {
  const excel = new FakeExcel();
  await officeSpreadsheet(excel).apply(drawn([]), options);
  const made = excel.sheet('Overview');
  expect([made.hasGridlines, made.tabColour]).toEqual([false, '#0f4c4a']);
  expect(made.print).toEqual({
    orientation: 'Landscape',
    zoom: { horizontalFitToPages: 1 },
    leftFooter: '&A',
    rightFooter: 'Page &P of &N',
  });
  const without = new FakeExcel();
  without.hasPrinter = false;
  await officeSpreadsheet(without).apply(drawn([chart]), options);
  expect(without.sheet('Overview').drawings).toHaveLength(1);
});
