import type { IssueCode } from '../core/issue';

export type ErrorValue = '#N/A' | '#NUM!' | '#VALUE!';

/** Which error a cell shows. Verdict functions rely on it: #NUM! says "there is none", #N/A says "not known". */
const ERROR_VALUES = {
  missing: '#N/A',
  'cell-error': '#N/A',
  'beyond-data': '#N/A',
  'no-result': '#NUM!',
  'not-a-number': '#VALUE!',
  'wrong-unit': '#VALUE!',
  ambiguous: '#VALUE!',
  'wrong-statistic': '#VALUE!',
  'bad-curve': '#VALUE!',
  'out-of-range': '#VALUE!',
  'unknown-choice': '#VALUE!',
  'wrong-size': '#VALUE!',
  'argument-count': '#VALUE!',
} as const satisfies Record<IssueCode, ErrorValue>;

export const errorValueOf = (code: IssueCode): ErrorValue => ERROR_VALUES[code];
