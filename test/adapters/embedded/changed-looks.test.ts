import { lookChange } from '../../../src/adapters/embedded/export/changed-looks';

it('what a look gained is laid over, what it lost is taken away, the rest is not touched', () => {
  const before = {
    font: 'Georgia',
    points: 12,
    bold: true,
    ink: '#112233',
    align: 'right',
    numberFormat: '0.0',
  } as const;
  expect(lookChange(before, { font: 'Georgia', points: 12, bold: true, ink: '#112233', align: 'right', numberFormat: '0.0' })).toEqual({}); // prettier-ignore
  expect(lookChange(before, { font: 'Georgia', points: 14, ground: '#ffeedd', italic: true })).toEqual({
    points: 14,
    ground: '#ffeedd',
    italic: true,
    bold: false,
    ink: null,
    align: null,
    numberFormat: 'General',
  });
  const lines = { borders: { top: { style: 'thin' }, bottom: { style: 'double', colour: '#000000' } } } as const;
  expect(lookChange(lines, {})).toEqual({ borders: {} });
  expect(lookChange(lines, { borders: { top: { style: 'thin' } } })).toEqual({ borders: { top: { style: 'thin' } } });
});

it('a font is never taken away, for a cell without one has that of the workbook', () => {
  expect(lookChange({ font: 'Georgia', points: 14 }, {})).toEqual({});
});
