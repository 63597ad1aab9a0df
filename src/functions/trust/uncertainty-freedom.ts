import { mapped } from '../../core/issue';
import { effectiveFreedom } from '../../core/trust/budget';
import { CONTRIBUTIONS, readContributions } from './contributions';
import { defineFunction } from '../define';

export const uncertaintyFreedom = defineFunction({
  name: 'UNCERTAINTY.FREEDOM',
  family: 'trust',
  summary: 'Effective degrees of freedom of a combined uncertainty.',
  equation: 'ν_eff = u_c⁴/Σ(u_i⁴/ν_i)',
  args: { contributions: CONTRIBUTIONS },
  result: { kind: 'block', text: 'Degrees of freedom, or “infinite”.' },
  validity:
    'Fourth column of the table: degrees of freedom, blank for infinite. Below about 30 take the coverage factor from UNCERTAINTY.COVERAGE.',
  source: {
    kind: 'standard',
    cite: 'JCGM 100:2008, Guide to the expression of uncertainty in measurement',
    locator: 'G.4.1, Welch and Satterthwaite; clause not checked',
    read: 'from memory',
  },

  compute: ({ contributions }) =>
    mapped(readContributions(contributions), (rows) => {
      const freedom = effectiveFreedom(rows);
      return Number.isFinite(freedom) ? freedom : 'infinite';
    }),

  examples: [
    {
      args: [
        [
          ['repeat readings', 1, 'standard', 9],
          ['certificate', 1, 'standard', null],
        ],
      ],
      result: 36,
      within: 1e-9,
      from: 'by hand: (√2)⁴/(1/9)',
    },
    {
      args: [[['certificate', 1, 'standard']]],
      result: 'infinite',
      from: 'by definition: no part is known badly',
    },
  ],
});
