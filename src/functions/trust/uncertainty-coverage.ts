import { coverageFactor } from '../../core/trust/student';
import { defineFunction } from '../define';

export const uncertaintyCoverage = defineFunction({
  name: 'UNCERTAINTY.COVERAGE',
  family: 'trust',
  summary: 'Coverage factor for a probability at given degrees of freedom.',
  equation: 'k = t_p(ν)',
  args: {
    freedom: {
      unit: '1',
      symbol: 'ν',
      text: 'Effective degrees of freedom; blank: infinite.',
      atLeast: 1,
      optional: true,
    },
    probability: { unit: '%', symbol: 'p', text: 'Probability of ±k·u.', above: 0, atMost: 99.999, default: 95.45 },
  },
  result: { unit: '1', symbol: 'k', text: 'Coverage factor.' },
  validity: 'Normal combined error. Degrees of freedom are taken as they are, not rounded down.',
  source: {
    kind: 'standard',
    cite: 'JCGM 100:2008, Guide to the expression of uncertainty in measurement',
    locator: 'G.3 and table G.2; clause not checked',
    read: 'from memory',
  },

  compute: ({ freedom = Infinity, probability }) => coverageFactor(probability, freedom),

  examples: [
    { args: [10, 95], result: 2.23, within: 2e-3, from: 'table G.2 of the guide, from memory: 2.23' },
    { args: [4, 95], result: 2.776445, within: 1e-6, from: 'by scipy.stats.t.ppf(0.975, 4)' },
    { args: [null, 95], result: 1.959964, within: 2e-6, from: 'by scipy.stats.norm.ppf(0.975)' },
    {
      args: [1, 50],
      result: 1,
      within: 1e-9,
      from: 'by hand: one degree of freedom is the Cauchy distribution, tan 45°',
    },
  ],
});
