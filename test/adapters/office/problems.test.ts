import { asHostProblem } from '../../../src/adapters/office/problems';
import { HostProblem, sentenceOf } from '../../../src/workbook/port';

// From Microsoft's list of error codes; the last one is none of theirs.
const CODES = ['AccessDenied', 'ApiNotFound', 'Conflict', 'FilteredRangeConflict', 'FormulaLengthExceedsLimit', 'GeneralException', 'InactiveWorkbook', 'InsertDeleteConflict', 'InvalidSelection', 'ItemAlreadyExists', 'ItemNotFound', 'MergedRangeConflict', 'NonBlankCellOffSheet', 'OpenWorkbookLinksBlocked', 'PivotTableRangeConflict', 'RangeExceedsLimit', 'RequestAborted', 'UnsupportedSheet', 'InvalidOperationInCellEditMode', 'Timeout', 'TooManyRequests', 'Unheard']; // prettier-ignore
const ENGLISH = /\b(the|that|this|then|try|again|sheet|cell|cells|something|nothing|there|with|workbook)\b/i;
const digits = (text: string) => text.replace(/\D/g, '');

describe('a refusal of Excel', () => {
  it.each(CODES)('%s is told in the language of the reader, with the same numbers', (code) => {
    const problem = asHostProblem(Object.assign(new Error('E-17'), { code })) as HostProblem;
    const english = sentenceOf(problem, 'en');
    expect(english).toBe(problem.message);
    for (const language of ['de', 'fr'] as const) {
      const said = sentenceOf(problem, language);
      expect(said).not.toBe(english);
      expect(said).not.toMatch(ENGLISH);
      expect(digits(said)).toBe(digits(english));
    }
  });
});
