import { mayFillCells, namedCalls, respelt, usesOwnFunctions } from '../../../src/workbook/remedies/own-calls';

describe('names of our functions in formulas', () => {
  // Spellings under which spreadsheet programs keep a function that they did not know when a formula was entered or saved.
  it.each([
    ['=CHAN.MASS.SHIFT(0.02)', '=CHAN.MASS.SHIFT(0.02)'],
    ['=chan.mass.shift(A1)', '=CHAN.MASS.SHIFT(A1)'],
    ['=CHAN_MASS_SHIFT(A1)', '=CHAN.MASS.SHIFT(A1)'],
    ['=_xlfn.CHAN.MASS.SHIFT(A1)', '=CHAN.MASS.SHIFT(A1)'],
    ['=_xldudf_CHAN_MASS_SHIFT(A1)', '=CHAN.MASS.SHIFT(A1)'],
    ['=[2]!_xldudf_CHAN_MASS_SHIFT(A1)', '=CHAN.MASS.SHIFT(A1)'],
    ["='C:\\x\\old plan.xlsm'!CHAN.MASS.SHIFT(A1)", '=CHAN.MASS.SHIFT(A1)'],
    ['=@CHAN.MASS.SHIFT(A1)', '=CHAN.MASS.SHIFT(A1)'],
    ['=_xll.CHAN.MASS.SHIFT(A1)', '=CHAN.MASS.SHIFT(A1)'],
    ['=IF(A1="CHAN_READ(1)",chan_headroom(1,2),0)', '=IF(A1="CHAN_READ(1)",CHAN.HEADROOM(1,2),0)'],
    ["='CHAN_READ (2)'!A1+CHAN_HEADROOM(1,2)", "='CHAN_READ (2)'!A1+CHAN.HEADROOM(1,2)"],
  ])('%s becomes %s', (before, after) => expect(respelt(before)).toBe(after));

  it('leave other functions and names that this version does not know as they are', () => {
    for (const formula of ['=SUM(A1)', '=_xlfn.XLOOKUP(A1,B:B,C:C)', '=CHAN.NOT.YET(1)', '=MYCHAN.X(1)', '=READ(A1)'])
      expect(respelt(formula)).toBe(formula);
    expect(namedCalls('=CHAN.NOT.YET(1)')).toMatchObject([{ kind: 'unknown to this version', name: 'NOT.YET' }]);
  });

  it('are only perhaps ours under another prefix or none', () => {
    for (const formula of ['=MASS.SHIFT(0.02)', '=OTHER.MASS.SHIFT(0.02)'])
      expect(namedCalls(formula)).toMatchObject([{ kind: 'perhaps ours', name: 'MASS.SHIFT' }]);
    expect(usesOwnFunctions('=MASS.SHIFT(0.02)')).toBe(false);
  });

  it('tell which results may fill several cells', () => {
    expect(mayFillCells('=CHAN.FREQUENCY.SPAN(1,2)')).toBe(true);
    expect(mayFillCells('=CHAN.MASS.SHIFT(0.02)')).toBe(false);
  });
});
