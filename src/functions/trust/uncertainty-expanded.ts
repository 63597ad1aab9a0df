import { mapped } from '../../core/issue';
import { expandedUncertainty } from '../../core/trust/budget';
import { CONTRIBUTIONS, readContributions } from './contributions';
import { defineFunction } from '../define';

export const uncertaintyExpanded = defineFunction({
  name: 'UNCERTAINTY.EXPANDED',
  family: 'trust',
  summary: 'Expanded uncertainty of a level, enlarged by an uncorrected one-sided error.',
  equation: 'U = k·u_c + |Σ b|',
  args: {
    contributions: CONTRIBUTIONS,
    coverageFactor: {
      unit: '1',
      symbol: 'k',
      text: 'Coverage factor; 2 is about 95 % if the effective degrees of freedom exceed 30.',
      above: 0,
      atMost: 10,
      default: 2,
    },
  },
  result: { unit: '%', symbol: 'U', text: 'Expanded uncertainty.' },
  validity:
    'As UNCERTAINTY.COMBINED. A bias that is known is better corrected; one that stays is stated by UNCERTAINTY.BIAS beside U.',
  source: {
    kind: 'standard',
    cite: 'JCGM 100:2008, Guide to the expression of uncertainty in measurement',
    locator: '6.2.1, and F.2.4.5 for uncorrected bias; clause not checked',
    read: 'from memory',
  },

  compute: ({ contributions, coverageFactor }) =>
    mapped(readContributions(contributions), (rows) => expandedUncertainty(rows, coverageFactor)),

  examples: [
    {
      args: [
        [
          ['calibration', 1.5, 'normal'],
          ['temperature', 2.4, 'rectangular'],
          ['transverse', 2.5, 'U-shaped'],
        ],
      ],
      result: 4.73604,
      within: 1e-4,
      from: 'by hand: 2 × 2.36802',
    },
    {
      args: [
        [
          ['noise', 3, 'standard'],
          ['gain', 4, 'standard'],
          ['mass loading', -2, 'bias'],
        ],
        2,
      ],
      result: 12,
      within: 1e-12,
      from: 'by hand: 2 × 5 + 2',
    },
  ],
});
