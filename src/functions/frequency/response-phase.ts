import { mapped } from '../../core/issue';

import { defineFunction } from '../define';
import { BLOCKS, RESPONSE_OF_BLOCKS, responseAt } from './blocks';

export const responsePhase = defineFunction({
  name: 'RESPONSE.PHASE',
  family: 'frequency span',
  summary: 'Phase of a channel at a frequency: lead of its high-pass poles, lag of its resonance.',
  ...RESPONSE_OF_BLOCKS,
  args: { frequency: { unit: 'Hz', symbol: 'f', text: 'Frequency looked at.', above: 0 }, ...BLOCKS },
  result: { unit: 'deg', symbol: 'φ', text: 'Positive: leads.' },

  compute: ({ frequency, ...blocks }) => mapped(responseAt(blocks), (response) => response(frequency).phase),

  examples: [
    { args: [1, 1], result: 45, within: 1e-6, from: 'by hand: atan 1' },
    { args: [11.430052302761343, 1], result: 5, within: 1e-6, from: 'by hand: atan(1/11.43005)' },
    {
      args: [10000, 'none', 10000, 30],
      result: -90,
      within: 1e-6,
      from: 'by hand: a resonance lags by a quarter turn',
    },
    { args: [4, '4; 4'], result: 90, within: 1e-6, from: 'by hand: two poles at their corner lead by 45° each' },
  ],
});
