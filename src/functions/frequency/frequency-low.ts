import { mapped } from '../../core/issue';
import { defineFunction } from '../define';
import { CHANNEL_RESPONSE, FLATNESS, spanOf } from './channel-response';

export const frequencyLow = defineFunction({
  name: 'FREQUENCY.LOW',
  family: 'frequency span',
  summary: 'Lowest frequency a channel measures within tolerance; 0 when it measures static acceleration.',
  ...FLATNESS,
  args: CHANNEL_RESPONSE,
  result: { unit: 'Hz', symbol: 'f', text: 'Low end of the usable span.' },

  compute: (channel) => mapped(spanOf(channel), ({ low }) => low),

  examples: [
    {
      args: [1e9, 30, 'IEPE', 0.5, 5, null, 'none', 5, 1000],
      result: 0.5,
      within: 1e-6,
      from: 'definition: one pole alone loses 5 % at its −5 % limit',
    },
    {
      args: [28000, 30, 'IEPE', 0.5, null, null, 0.5],
      result: 1.6092491,
      within: 1e-7,
      from: 'scipy.optimize.brentq on the same product, poles 0.164342 and 0.5 Hz',
    },
    {
      args: [1400, 0.7142857, 'DC', null, null, null, 'none', 5, 20],
      result: 0,
      from: 'definition: no high-pass pole',
    },
  ],
});
