import { mapped } from '../../core/issue';

import { defineFunction } from '../define';
import { BLOCKS, RESPONSE_OF_BLOCKS, responseAt } from './blocks';

export const responseDeviation = defineFunction({
  name: 'RESPONSE.DEVIATION',
  family: 'frequency span',
  summary: 'Deviation of a channel’s sensitivity at a frequency from that at the reference.',
  ...RESPONSE_OF_BLOCKS,
  args: { frequency: { unit: 'Hz', symbol: 'f', text: 'Frequency looked at.', above: 0 }, ...BLOCKS },
  result: { unit: '%', symbol: 'ε', text: 'Negative: reads low.' },

  compute: ({ frequency, ...blocks }) => mapped(responseAt(blocks), (response) => response(frequency).gain - 1),

  examples: [
    {
      args: [1, 1, null, null, 1e9],
      result: -29.28932,
      within: 1e-6,
      from: 'by hand: one pole at its corner, 1/√2 − 1',
    },
    {
      args: [2000, 'none', 10000, 1000000.0, 0.001],
      result: 4.166667,
      within: 1e-6,
      from: 'by hand, undamped: 1/(1 − 0.04) − 1 = 1/24',
    },
    {
      args: [0.5, '0.1643420525894316; 0.5', null, null, 1e6],
      result: -32.82486,
      within: 1e-6,
      from: 'by hand: 0.95/√2 − 1, AC coupling at the sensor’s −5 % limit',
    },
  ],
});
