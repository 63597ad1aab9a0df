import { mapped } from '../../core/issue';
import { combinedUncertainty } from '../../core/trust/budget';
import { CONTRIBUTIONS, readContributions } from './contributions';
import { defineFunction } from '../define';

export const uncertaintyCombined = defineFunction({
  name: 'UNCERTAINTY.COMBINED',
  family: 'trust',
  summary: 'Combined standard uncertainty of a level from a table of contributions.',
  equation: 'u_c = √Σ (a_i/d_i)²',
  args: { contributions: CONTRIBUTIONS },
  result: { unit: '%', symbol: 'u_c', text: 'Combined standard uncertainty.' },
  validity:
    'Small, independent contributions to a product: all sensitivities are 1. Of rows with the same effect only the largest counts. Bias rows are left out: see UNCERTAINTY.BIAS.',
  source: {
    kind: 'standard',
    cite: 'JCGM 100:2008, Guide to the expression of uncertainty in measurement',
    locator: '5.1.2; clause not checked',
    read: 'from memory',
  },

  compute: ({ contributions }) => mapped(readContributions(contributions), combinedUncertainty),

  examples: [
    {
      args: [
        [
          ['calibration', 1.5, 'normal'],
          ['temperature', 2.4, 'rectangular'],
          ['transverse', 2.5, 'U-shaped'],
        ],
      ],
      result: 2.36802,
      within: 1e-4,
      from: 'by hand: √(0.75² + 1.38564² + 1.76777²) = √(0.5625 + 1.92 + 3.125)',
    },
    {
      args: [
        [
          ['contribution', '±', 'distribution', 'freedom', 'effect'],
          ['flatness class', 5, 1, null, 'response'],
          ['resonance rise', 4, 1, null, 'response'],
          ['calibration', 12, 'standard', null, null],
        ],
      ],
      result: 13,
      within: 1e-12,
      from: 'by hand: √(5² + 12²); the resonance rise is the same effect as the class',
    },
  ],
});
