import { verdictAtLeast } from '../../core/verdict';
import { defineFunction } from '../define';

export const verdictAtleast = defineFunction({
  name: 'VERDICT.ATLEAST',
  family: 'verdict',
  summary: 'PASS, WARN, FAIL or INCOMPLETE for a number that must be large enough.',
  equation: 'PASS if x ≥ pass, WARN if x ≥ warn, else FAIL',
  args: {
    number: {
      unit: '1',
      symbol: 'x',
      text: 'The number to judge; a blank, text or error is INCOMPLETE.',
      forgiving: true,
    },
    pass: { unit: '1', text: 'Smallest number that passes.' },
    warn: { unit: '1', text: 'Smallest number that only warns; blank: there is no WARN.', optional: true },
  },
  result: { kind: 'text', text: 'PASS, WARN, FAIL or INCOMPLETE.' },
  validity: 'A number equal to its limit counts as inside. Number and limits in the same unit.',
  source: { kind: 'derivation', from: 'definition of the verdict words; a missing number is never a PASS' },

  compute: ({ number, pass, warn }) => verdictAtLeast(number, pass, warn),

  examples: [
    { args: [20, 20, 10], result: 'PASS', from: 'by definition: the limit itself passes' },
    { args: [13, 20, 10], result: 'WARN', from: 'by definition: 10 ≤ 13 < 20' },
    { args: [13, 20], result: 'FAIL', from: 'by definition: without a WARN zone 13 < 20 fails' },
    { args: [null, 20, 10], result: 'INCOMPLETE', from: 'by definition: nothing to judge' },
  ],
});
