import { isAbsentText, isDittoText } from '../../../src/core/text/absent';
import { guessDecimal } from '../../../src/core/text/decimal';
import { threadFromDate } from '../../../src/core/text/thread-dates';

describe('texts of real lists', () => {
  it.each(['', ' ', '-', '–', '—', '?', 'n/a', 'N/A', 'TBD', 'tbc'])('%j says that there is no value', (text) => {
    expect(isAbsentText(text)).toBe(true);
  });
  it.each(['0', '5', '-5', 'none', 'x', 'not applicable to this sensor'])('%j is not absent', (text) => {
    expect(isAbsentText(text)).toBe(false);
  });
  it('knows ditto marks', () => {
    expect(['"', '”', "''", 'ditto', 'dto.'].every(isDittoText)).toBe(true);
    expect(isDittoText('do 5')).toBe(false);
  });
});

describe('the decimal mark of a list', () => {
  it.each<[unknown[], '.' | ',' | undefined]>([
    [['0,5', '1,250', 'wing'], ','],
    [['12,5 kg', '3'], ','],
    [['1.234,5'], ','],
    [['1.234.567'], ','],
    [['0.5', '1,250'], '.'],
    [['1,234,567'], '.'],
    [['±0.25 g'], '.'],
    [['1,250', '1.250', 7, null], undefined],
    [['0,5', '0.5'], undefined],
    [['M5x0.8', '1.2.2024'], undefined],
    [[], undefined],
  ])('%j: %s', (cells, mark) => {
    expect(guessDecimal(cells)).toBe(mark);
  });
});

// Serial numbers by the spreadsheet's own day count: 1 January 1900 is day 1 and a 29 February 1900 is counted.
describe('a thread name that became a date', () => {
  it.each<[number, string, string]>([
    [11_963, 'mmm-yy', '10-32'],
    [16_193, 'mmm-yy', '5-44'],
    [20_486, 'mmm-yy', '2-56'],
    [45_589, 'd-mmm', '10-24'],
    [45_589, 'd-mmm;@', '10-24'],
  ])('%d shown as %s was %s', (serial, format, name) => {
    expect(threadFromDate(serial, format)).toBe(name);
  });
  it.each<[number, string]>([
    [11_964, 'mmm-yy'],
    [11_963, 'General'],
    [11_963, 'dd/mm/yyyy'],
    [45_590, 'd-mmm'],
    [0.5, 'mmm-yy'],
  ])('%d shown as %s is left alone', (serial, format) => {
    expect(threadFromDate(serial, format)).toBeUndefined();
  });
});
