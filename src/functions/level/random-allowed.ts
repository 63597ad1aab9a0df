import { failure, outcome } from '../../core/issue';
import { defineFunction } from '../define';

export const randomAllowed = defineFunction({
  name: 'RANDOM.ALLOWED',
  family: 'level and dynamic range',
  summary: 'Random r.m.s. level that fits under a limit together with a sine.',
  equation: 'σ = (a − A)/k',
  args: {
    ceiling: { unit: 'g', symbol: 'a', text: 'Upper limit, peak.', above: 0, statistic: 'peak' },
    sine: { unit: 'g', symbol: 'A', text: 'Peak of the sine.', atLeast: 0, statistic: 'peak' },
    multiple: { unit: '1', symbol: 'k', text: 'Multiple of the random r.m.s. planned for.', atLeast: 1, default: 3 },
  },
  result: { unit: 'g', symbol: 'σ', text: 'R.m.s. of the random part allowed.' },
  validity: 'As LEVEL.COMBINED, whose inverse it is.',
  source: { kind: 'derivation', from: 'a = A + k·σ solved for σ' },

  compute: ({ ceiling, sine, multiple }) =>
    ceiling > sine
      ? outcome((ceiling - sine) / multiple)
      : failure({ code: 'no-result', rule: 'the sine alone reaches the limit' }),

  examples: [
    { args: [25, 10], result: 5, within: 1e-6, from: 'by hand: 15/3' },
    { args: [8, 4, 4], result: 1, within: 1e-6, from: 'by hand: 4/4' },
  ],
});
