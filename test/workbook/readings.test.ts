import type { Cell } from '../../src/functions/define';
import { readingsOf } from '../../src/workbook/readings';
import { recognise } from '../../src/workbook/recognise';
import type { SheetContent } from '../../src/workbook/port';

const HEADINGS = [
  'Channel',
  'Point',
  'Lowest level [g rms]',
  'Highest level',
  'Band low [Hz]',
  'Band high [Hz]',
  'Sensor type',
];
const readingsFor = (headings: readonly string[], ...rows: readonly (readonly Cell[])[]) => {
  const values = [headings, ...rows];
  const content: SheetContent = {
    sheet: 'List',
    row: 0,
    column: 0,
    values,
    tables: [],
    merged: [],
    hiddenRows: [],
    formulas: values.map((row) => row.map(() => '')),
  };
  const tables = recognise([{ info: { name: 'List', active: true, visible: true }, content }]);
  return (language?: 'en' | 'de' | 'fr') => readingsOf(tables, () => content, language);
};
const row = (high: Cell, low: Cell = 5): Cell[] => ['W1', 12, 0.02, high, low, 800, 'Ce-50 light'];

describe('what is read otherwise than it stands there', () => {
  it('names a unit and a statistic that the heading leaves open, at the heading', () => {
    const readings = readingsFor(HEADINGS, row(14), row(9));
    expect(readings()).toEqual([
      {
        text: '"Highest level" names no unit: plain numbers are taken in g.',
        at: { sheet: 'List', row: 0, column: 3 },
      },
      {
        text: '"Highest level" does not say which level: numbers are taken as peak.',
        at: { sheet: 'List', row: 0, column: 3 },
      },
    ]);
    expect(readings('de')[1]?.text).toContain('Spitzenwert');
    expect(readings('fr')[1]?.text).toContain('crête');
  });
  it('is silent where each cell says it', () => {
    expect(readingsFor(HEADINGS, row('14 g pk'), row('9 g pk'))()).toEqual([]);
  });
  it('shows the value of a text with an assumption', () => {
    expect(readingsFor(HEADINGS, row('14 g pk'), row('9 g pk', 'DC'))()).toEqual([
      { text: '"DC" is read as 0 Hz.', at: { sheet: 'List', row: 2, column: 4 } },
    ]);
  });
});
