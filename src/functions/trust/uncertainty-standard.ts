import { DISTRIBUTIONS, divisorOf } from '../../core/trust/distribution';
import { defineFunction } from '../define';

export const uncertaintyStandard = defineFunction({
  name: 'UNCERTAINTY.STANDARD',
  family: 'trust',
  summary: 'Standard uncertainty of a ± value.',
  equation: 'u = a/d, d = √3 (rectangular), √6 (triangular), √2 (U-shaped), 2 (normal), 1 (standard)',
  args: {
    halfWidth: { unit: '%', symbol: 'a', text: 'The ± value.', atLeast: 0 },
    distribution: {
      kind: 'choice',
      choices: DISTRIBUTIONS,
      default: 'rectangular',
      text: 'Distribution of the true value; normal: expanded with k = 2.',
    },
  },
  result: { unit: '%', symbol: 'u', text: 'Standard uncertainty.' },
  validity: 'A certificate with another coverage factor: divide by it and choose “standard”.',
  source: {
    kind: 'standard',
    cite: 'JCGM 100:2008, Guide to the expression of uncertainty in measurement',
    locator: '4.3; clause not checked',
    read: 'from memory',
  },

  compute: ({ halfWidth, distribution }) => halfWidth / divisorOf(distribution),

  examples: [
    { args: [2.4], result: 1.385641, within: 1e-6, from: 'by hand: 2.4/1.7320508' },
    { args: [1.2, 'triangular'], result: 0.489898, within: 1e-6, from: 'by hand: 1.2/2.4494897' },
    { args: [1.5, 'normal'], result: 0.75, within: 1e-12, from: 'by hand: 1.5/2' },
  ],
});
