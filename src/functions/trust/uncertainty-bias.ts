import { mapped } from '../../core/issue';
import { statedBias } from '../../core/trust/budget';
import { CONTRIBUTIONS, readContributions } from './contributions';
import { defineFunction } from '../define';

export const uncertaintyBias = defineFunction({
  name: 'UNCERTAINTY.BIAS',
  family: 'trust',
  summary: 'Sum of the one-sided errors that were not corrected, with sign.',
  equation: 'b = Σ b_i',
  args: { contributions: CONTRIBUTIONS },
  result: { unit: '%', symbol: 'b', text: 'Uncorrected bias of the reading.' },
  validity: 'Rows whose distribution is “bias”. State it beside the expanded uncertainty rather than hide it.',
  source: { kind: 'derivation', from: 'errors of a product add to first order' },

  compute: ({ contributions }) => mapped(readContributions(contributions), statedBias),

  examples: [
    {
      args: [
        [
          ['mass loading', -2, 'bias'],
          ['noise', 0.5, 'bias'],
          ['gain', 1, 'rectangular'],
        ],
      ],
      result: -1.5,
      within: 1e-12,
      from: 'by hand: −2 + 0.5',
    },
    { args: [[['gain', 1, 'rectangular']]], result: 0, within: 0, from: 'by definition: no bias row' },
  ],
});
