import fc from 'fast-check';
import { csvText, guarded } from '../../../src/workbook/export/csv-text';

describe('a text in a CSV file', () => {
  it.each([
    ['=1+1'],
    ['+X'],
    ['-5 V'],
    ['@SUM(A1)'],
    ['\tcmd'],
    ['\r=1'],
    ['＝1+1'],
    ['＋1'],
    ['－1'],
    ['＠a'],
    ['  =1+1'],
    ['\u00a0=1'],
    ['\ufeff=1'],
    ["'tis"],
  ])('%j gets an apostrophe in front', (text) => {
    expect(guarded(text)).toBe(`'${text}`);
  });

  it.each([['W014'], ['3 = 4'], ['a-b'], ['–'], ['±5'], ['5'], ['']])('%j stays as it is', (text) => {
    expect(guarded(text)).toBe(text);
  });

  it('comes back by taking one apostrophe away, whatever it was', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        expect(guarded(text).replace(/^'/, '')).toBe(text);
      }),
      { numRuns: 2000, seed: 2 },
    );
  });

  it('never begins as a formula does', () => {
    const start = fc.constantFrom('=', '+', '-', '@', '＝', '＋', '－', '＠', '\t', '\r', ' =', "'=", '"=', '|');
    fc.assert(
      fc.property(start, fc.string(), (first, rest) => {
        expect(guarded(first + rest)).not.toMatch(/^\s*[=+\-@＝＋－＠]/);
      }),
      { numRuns: 2000, seed: 3 },
    );
  });
});

describe('a CSV file', () => {
  it('ends every line in CR LF and quotes what needs it, as RFC 4180 says', () => {
    const lines = [
      ['a', 'b,c', 'say "so"'],
      [1.5, null, 'two\nlines'],
    ];
    expect(csvText(lines, { separator: ',', decimal: '.' })).toBe('a,"b,c","say ""so"""\r\n1.5,,"two\nlines"\r\n');
  });

  it('keeps negative numbers as numbers, and writes the decimal mark that is asked for', () => {
    expect(csvText([[-20, 1e-7, 'x;y']], { separator: ';', decimal: ',' })).toBe('-20;1e-7;"x;y"\r\n');
    expect(csvText([[-0.5]], { separator: ';', decimal: ',' })).toBe('-0,5\r\n');
  });
});
