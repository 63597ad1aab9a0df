import { defineFunction } from '../define';

export const recordTime = defineFunction({
  name: 'RECORD.TIME',
  family: 'frequency span',
  summary: 'Length of a record that gives a line spacing.',
  equation: 'T = 1/Δf',
  args: {
    lineSpacing: { unit: 'Hz', symbol: 'Δf', text: 'Line spacing.', above: 0 },
  },
  result: { unit: 's', symbol: 'T', text: 'Length of one record.' },
  validity: 'One record, no zero padding.',
  source: { kind: 'derivation', from: 'lines of a discrete Fourier transform lie 1/T apart' },

  compute: ({ lineSpacing }) => 1 / lineSpacing,

  examples: [
    { args: [0.25], result: 4, within: 1e-6, from: 'by hand: 1/0.25' },
    { args: [10], result: 0.1, within: 1e-6, from: 'by hand: 1/10' },
  ],
});
