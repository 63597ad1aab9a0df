import { verdictAtMost } from '../../core/verdict';
import { defineFunction } from '../define';

export const verdictAtmost = defineFunction({
  name: 'VERDICT.ATMOST',
  family: 'verdict',
  summary: 'PASS, WARN, FAIL or INCOMPLETE for a number that must be small enough.',
  equation: 'PASS if x ≤ pass, WARN if x ≤ warn, else FAIL',
  args: {
    number: {
      unit: '1',
      symbol: 'x',
      text: 'The number to judge; a blank, text or error is INCOMPLETE.',
      forgiving: true,
    },
    pass: { unit: '1', text: 'Largest number that passes.' },
    warn: { unit: '1', text: 'Largest number that only warns; blank: there is no WARN.', optional: true },
  },
  result: { kind: 'text', text: 'PASS, WARN, FAIL or INCOMPLETE.' },
  validity: 'A number equal to its limit counts as inside. Number and limits in the same unit.',
  source: { kind: 'derivation', from: 'definition of the verdict words; a missing number is never a PASS' },

  compute: ({ number, pass, warn }) => verdictAtMost(number, pass, warn),

  examples: [
    { args: [0.1, 0.1, 0.2], result: 'PASS', from: 'by definition: the limit itself passes' },
    { args: [0.15, 0.1, 0.2], result: 'WARN', from: 'by definition: 0.1 < 0.15 ≤ 0.2' },
    { args: [0.27, 0.1, 0.2], result: 'FAIL', from: 'by definition: 0.27 > 0.2' },
    { args: ['pending', 0.1, 0.2], result: 'INCOMPLETE', from: 'by definition: a word is no number' },
  ],
});
