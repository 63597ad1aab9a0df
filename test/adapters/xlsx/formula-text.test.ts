import { longText, UNENDED } from '../../fixtures/hostile-texts';
import fc from 'fast-check';
import { FormulaNames } from '../../../src/adapters/xlsx/formula-names';
import { referencesIn, shiftFormula, tokenize } from '../../../src/adapters/xlsx/formula-text';
import { FUNCTIONS } from '../../../src/functions/index';
import { rangeAddress } from '../../../src/workbook/address';

describe('a formula copied elsewhere', () => {
  // What a spreadsheet shows after copying the formula two rows down and one column right.
  it.each([
    ['A1+$A$1+A$1+$A1', 'B3+$A$1+B$1+$A3'],
    ['SUM(A1:B2,C:C,$C:D,3:4,$3:4)', 'SUM(B3:C4,D:D,$C:E,5:6,$3:6)'],
    ['"A1"&A1&"say ""A1"""', '"A1"&B3&"say ""A1"""'],
    ["'A1 sheet'!A1+Plan!B2+A1!A1", "'A1 sheet'!B3+Plan!C4+A1!B3"],
    ['[1]Plan!A1', '[1]Plan!B3'],
    ['LOG10(A1)+ATAN2(A1,B1)', 'LOG10(B3)+ATAN2(B3,C3)'],
    ['Loads[[#This Row],[A1]]+Loads[A1]', 'Loads[[#This Row],[A1]]+Loads[A1]'],
    ['1E5+A1*2.5E-3', '1E5+B3*2.5E-3'],
    ['IF(A1=#N/A,TRUE,mass_A1)', 'IF(B3=#N/A,TRUE,mass_A1)'],
    ['XFD1', '#REF!'],
    ['A1048576', '#REF!'],
    ['SUM(Jan:Mar!A1)', 'SUM(Jan:Mar!B3)'],
  ])('%s becomes %s', (before, after) => {
    expect(shiftFormula(before, 2, 1)).toBe(after);
  });

  it('comes back when it is copied back', () => {
    const cell = fc
      .tuple(fc.integer({ min: 20, max: 900 }), fc.constantFrom('K', 'L', 'ZZ', '$M'))
      .map(([r, c]) => c + r);
    const piece = fc.oneof(cell, fc.constantFrom('+', '*2', 'SUM(', ')', '"x"', ',', ' '));
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 12 }), fc.nat(9), fc.nat(9), (pieces, rows, columns) => {
        const formula = pieces.join(' ');
        expect(shiftFormula(shiftFormula(formula, rows, columns), -rows, -columns)).toBe(formula);
      }),
    );
  });

  it('is cut into tokens that are together the same text, whatever it is', () => {
    fc.assert(
      fc.property(fc.stringMatching(/^[A-Z1$"'[\]!:(), #é]{0,60}$/), (text) => {
        expect(
          tokenize(text)
            .map((token) => token.text)
            .join(''),
        ).toBe(text);
      }),
      { numRuns: 1000 },
    );
  });

  it.each(UNENDED)('keeps every character of 30,000 of %j, whose end never comes', (sign) => {
    const formula = longText(sign, 30_000);
    expect(
      tokenize(formula)
        .map(({ text }) => text)
        .join(''),
    ).toBe(formula);
  });
  it.each(['"a, b', "'a, b", '[a, b', "['a, b", "['a'", '[[a', '[['])(
    'takes all of %j as one token, so that nothing is searched twice',
    (formula) => {
      expect(tokenize(formula)).toHaveLength(1);
    },
  );
});

describe('the references of a formula', () => {
  it.each([
    ['A1+B$2', ['A1', 'B2']],
    ['SUM(A1:B3)', ['A1:B3']],
    ["'My plan'!C1:D2", ['My plan!C1:D2']],
    ["'It''s'!C1", ["It's!C1"]],
    ['SUM(C:C)', ['C1:C1048576']],
    ['SUM(2:3)', ['A2:XFD3']],
    ['[2]Plan!A1', []],
    ["'[2]Plan'!A1", []],
    ['"A1"&LOG10(2)', []],
  ])('%s', (formula, expected) => {
    const found = referencesIn(formula).map(({ sheet, range }) => (sheet ? `${sheet}!` : '') + rangeAddress(range));
    expect(found).toEqual(expected);
  });
});

describe('the names of our functions', () => {
  const names = new FormulaNames(FUNCTIONS.map(({ name }) => name));

  it('come back from the stored form, every one of them', () => {
    for (const { name } of FUNCTIONS) {
      const stored = names.write(`IF(CHAN.${name}(A1,"CHAN.${name}(")>0,1,2)`);
      expect(stored).toBe(`IF(_xldudf_CHAN_${name.replaceAll('.', '_')}(A1,"CHAN.${name}(")>0,1,2)`);
      expect(names.read(stored)).toBe(`IF(CHAN.${name}(A1,"CHAN.${name}(")>0,1,2)`);
    }
  });

  it.each([
    // Another program lower-cases unknown names when it saves.
    ['_xldudf_chan_mass_ratio(A1)', 'CHAN.MASS.RATIO(A1)'],
    // Names that were tied to a foreign workbook are mended.
    ['[2]!_xldudf_CHAN_MASS_RATIO(A1)*2', 'CHAN.MASS.RATIO(A1)*2'],
    ['_xldudf_CHAN_NO_SUCH_THING(A1)', '_xldudf_CHAN_NO_SUCH_THING(A1)'],
    ['_xldudf_OTHER_ADDIN(A1)', '_xldudf_OTHER_ADDIN(A1)'],
    ['_xlfn.XLOOKUP(A1,B:B,C:C)', 'XLOOKUP(A1,B:B,C:C)'],
    ['_xlfn._xlws.SORT(A1:A9)', 'SORT(A1:A9)'],
    ['"_xldudf_CHAN_MASS_RATIO("', '"_xldudf_CHAN_MASS_RATIO("'],
  ])('%s is read as %s', (stored, shown) => {
    expect(names.read(stored)).toBe(shown);
  });

  it('are stored whatever case they were typed in, and newer functions get their prefix', () => {
    expect(names.write('chan.mass.ratio(1,2)+XLOOKUP(1,A:A,B:B)+FILTER(A:A,B:B)')).toBe(
      '_xldudf_CHAN_MASS_RATIO(1,2)+_xlfn.XLOOKUP(1,A:A,B:B)+_xlfn._xlws.FILTER(A:A,B:B)',
    );
  });
});
