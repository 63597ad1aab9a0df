import { isAbsentText, isDittoText } from '../../../src/core/text/absent';
import { isOtherWithComma, showsDecimalComma } from '../../../src/core/text/decimal';

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
  it.each<[unknown[], boolean]>([
    [['0,5', '1,250', 'wing'], true],
    [['12,5 kg', '3'], true],
    [['1.234,5'], true],
    [['0,5', '0.5'], true],
    [['0.5', '1,250'], false],
    [['1,234,567'], false],
    [['1,250', '1.250', 7, null], false],
    [['M5x0.8', '1.2.2024'], false],
    [[], false],
  ])('%j is a comma: %s', (cells, isComma) => {
    expect(showsDecimalComma(cells)).toBe(isComma);
  });
  it.each<[string, boolean]>([
    ['1.500', true],
    ['±12.500 m/s²', true],
    ['0.500', false],
    ['1.5', false],
    ['1.234,5', false],
    ['Node 1.500', false],
  ])('%s is another number where decimals have a comma: %s', (text, isOther) => {
    expect(isOtherWithComma(text)).toBe(isOther);
  });
});
