import { sampleRateNeeded as rateFor } from '../../core/frequency/analyser';
import { defineFunction } from '../define';

export const sampleRateNeeded = defineFunction({
  name: 'SAMPLE.RATE.NEEDED',
  family: 'frequency span',
  summary: 'Sample rate for an upper band edge.',
  equation: 'f_s = 2.56·f',
  args: {
    high: { unit: 'Hz', symbol: 'f', text: 'Upper edge of the needed band.', above: 0 },
  },
  result: { unit: 'Hz', symbol: 'f_s', text: 'Sample rate; take the next one above.' },
  validity: 'As ANALYSER.LIMIT, whose inverse it is.',
  source: { kind: 'practice', note: 'common practice, no source' },

  compute: ({ high }) => rateFor(high),

  examples: [
    { args: [20000], result: 51200, within: 1e-6, from: 'by hand: 20000 × 2.56' },
    { args: [1000], result: 2560, within: 1e-6, from: 'by hand: 1000 × 2.56' },
  ],
});
