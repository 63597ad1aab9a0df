import { mapped } from '../../core/issue';
import { defineFunction } from '../define';
import { CHANNEL_RESPONSE, FLATNESS, spanOf } from './channel-response';

export const frequencyHigh = defineFunction({
  name: 'FREQUENCY.HIGH',
  family: 'frequency span',
  summary: 'Highest frequency a channel measures within tolerance, or up to which its analyser or cable reaches.',
  ...FLATNESS,
  args: CHANNEL_RESPONSE,
  result: { unit: 'Hz', symbol: 'f', text: 'High end of the usable span.' },

  compute: (channel) => mapped(spanOf(channel), ({ high }) => high),

  examples: [
    {
      args: [10000, 1e6, 'bridge', null, null, null, 'none', 5, 1],
      result: 2182.179,
      within: 1e-6,
      from: 'by hand, undamped: 1/(1−x²) = 1.05, x = √(1/21)',
    },
    {
      args: [1400, 0.7142857, 'DC', null, null, null, 'none', 5, 20],
      result: 827.397,
      within: 1e-6,
      from: 'scipy.optimize.brentq on the second-order response, which falls here',
    },
    {
      args: [38000, 30, 'IEPE', 0.5, null, null, 0.05, null, null, 512],
      result: 200,
      within: 1e-12,
      from: 'by hand: 512/2.56, below the +5 % point of the resonance near 8.3 kHz',
    },
  ],
});
