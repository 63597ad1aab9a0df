import { mapped } from '../../core/issue';
import { decibels } from '../../core/level/margin';
import { defineFunction } from '../define';
import { BLOCKS, RESPONSE_OF_BLOCKS, responseAt } from './blocks';

export const responseLoss = defineFunction({
  name: 'RESPONSE.LOSS',
  family: 'frequency span',
  summary: 'Response of a channel at a frequency: deviation, the same in dB, and phase.',
  ...RESPONSE_OF_BLOCKS,
  args: { frequency: { unit: 'Hz', symbol: 'f', text: 'Frequency looked at.', above: 0 }, ...BLOCKS },
  result: {
    kind: 'row',
    columns: [
      { title: 'deviation', unit: '%', text: 'From the reference; negative reads low.' },
      { title: 'level', unit: 'dB', text: 'The same as a level.' },
      { title: 'phase', unit: 'deg', text: 'Positive leads.' },
    ],
  },

  compute: ({ frequency, ...blocks }) =>
    mapped(responseAt(blocks), (response) => {
      const { gain, phase } = response(frequency);
      return [gain - 1, decibels(gain, 1), phase];
    }),

  examples: [
    {
      args: [1, 1, null, null, 1e9],
      result: [[-29.28932, -3.0103, 45]],
      within: 1e-6,
      from: 'by hand: 1/√2 and atan 1',
    },
    {
      args: [5, '5; 5', null, null, 1e9],
      result: [[-50, -6.0206, 90]],
      within: 1e-6,
      from: 'by hand: two poles at their corner, 1/2',
    },
  ],
});
