import { defineFunction } from '../define';

export const lineSpacing = defineFunction({
  name: 'LINE.SPACING',
  family: 'frequency span',
  summary: 'Line spacing of a record.',
  equation: 'Δf = 1/T',
  args: {
    recordTime: { unit: 's', symbol: 'T', text: 'Length of one record.', above: 0 },
  },
  result: { unit: 'Hz', symbol: 'Δf', text: 'Line spacing.' },
  validity: 'One record, no zero padding.',
  source: { kind: 'derivation', from: 'lines of a discrete Fourier transform lie 1/T apart' },

  compute: ({ recordTime }) => 1 / recordTime,

  examples: [
    { args: [4], result: 0.25, within: 1e-6, from: 'by hand: 1/4' },
    { args: [0.1], result: 10, within: 1e-6, from: 'by hand: 1/0.1' },
  ],
});
