import { defineFunction } from '../define';

export const pulseShortest = defineFunction({
  name: 'PULSE.SHORTEST',
  family: 'frequency span',
  summary: 'Shortest half-sine shock pulse that a resonance follows.',
  equation: 'T = n/f_r',
  args: {
    resonance: { unit: 'Hz', symbol: 'f_r', text: 'Mounted resonance.', above: 0 },
    product: { unit: '1', symbol: 'n', text: 'Turns of the resonance per pulse.', above: 0, default: 10 },
  },
  result: { unit: 'ms', symbol: 'T', text: 'Duration of the pulse.' },
  validity:
    '10 keeps the peak of a lightly damped sensor within about 4 %, 5 within about 8 % (common practice for the choice).',
  source: { kind: 'practice', note: 'common practice, no source' },

  compute: ({ resonance, product }) => product / resonance,

  examples: [
    { args: [26000], result: 0.3846154, within: 1e-6, from: 'by hand: 10/26 kHz' },
    { args: [50000, 5], result: 0.1, within: 1e-6, from: 'by hand: 5/50 kHz' },
  ],
});
