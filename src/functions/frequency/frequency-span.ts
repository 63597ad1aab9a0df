import { mapped } from '../../core/issue';
import { defineFunction } from '../define';
import { CHANNEL_RESPONSE, FLATNESS, spanOf } from './channel-response';

export const frequencySpan = defineFunction({
  name: 'FREQUENCY.SPAN',
  family: 'frequency span',
  summary: 'Both ends of the band a channel measures within tolerance.',
  ...FLATNESS,
  args: CHANNEL_RESPONSE,
  result: {
    kind: 'row',
    columns: [
      { title: 'low', unit: 'Hz', text: 'Low end; 0 when nothing limits it.' },
      { title: 'high', unit: 'Hz', text: 'High end.' },
    ],
  },

  compute: (channel) => mapped(spanOf(channel), ({ low, high }) => [low, high]),

  examples: [
    {
      args: [10000, 1e6, 'bridge', null, null, null, 'none', 10, 1],
      result: [[0, 3015.113]],
      within: 1e-6,
      from: 'by hand, undamped: 1/(1−x²) = 1.1, x = √(1/11)',
    },
    {
      args: [28000, 30, 'voltage', 0.3, 29.289322, null, 0.5, 10],
      result: [[1.230152, 8445.996]],
      within: 1e-6,
      from: 'scipy.optimize.brentq on the same product; −29.289 % is −3 dB, so the poles are 0.3 and 0.5 Hz',
    },
  ],
});
