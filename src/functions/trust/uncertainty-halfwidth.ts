import { DISTRIBUTIONS, divisorOf } from '../../core/trust/distribution';
import { defineFunction } from '../define';

export const uncertaintyHalfwidth = defineFunction({
  name: 'UNCERTAINTY.HALFWIDTH',
  family: 'trust',
  summary: 'The ± value that a standard uncertainty allows.',
  equation: 'a = d·u',
  args: {
    standard: { unit: '%', symbol: 'u', text: 'Standard uncertainty.', atLeast: 0 },
    distribution: {
      kind: 'choice',
      choices: DISTRIBUTIONS,
      default: 'rectangular',
      text: 'Distribution of the true value; normal: expanded with k = 2.',
    },
  },
  result: { unit: '%', symbol: 'a', text: 'The ± value.' },
  validity: 'As UNCERTAINTY.STANDARD, whose inverse it is.',
  source: {
    kind: 'standard',
    cite: 'JCGM 100:2008, Guide to the expression of uncertainty in measurement',
    locator: '4.3; clause not checked',
    read: 'from memory',
  },

  compute: ({ standard, distribution }) => standard * divisorOf(distribution),

  examples: [
    { args: [1, 'U-shaped'], result: 1.414214, within: 1e-6, from: 'by hand: √2' },
    { args: [0.75, 'normal'], result: 1.5, within: 1e-12, from: 'by hand: 2 × 0.75' },
  ],
});
