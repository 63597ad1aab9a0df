import { defineFunction } from '../define';

export const crestFactor = defineFunction({
  name: 'CREST.FACTOR',
  family: 'level and dynamic range',
  summary: 'Peak over r.m.s., for a signal or for the room under an upper limit.',
  equation: 'k = a/σ',
  args: {
    peak: { unit: 'g', symbol: 'a', text: 'Peak level, or upper limit.', above: 0, statistic: 'peak' },
    rms: { unit: 'g', symbol: 'σ', text: 'R.m.s. level.', above: 0, statistic: 'rms' },
  },
  result: { unit: '1', symbol: 'k', text: 'Crest factor; for random vibration the room in standard deviations.' },
  validity: 'Sine 1.414; plan random with 3 to 5; an impact 5 to 20 (common practice, no source).',
  source: { kind: 'derivation', from: 'definition, ISO 2041 (from memory)' },

  compute: ({ peak, rms }) => peak / rms,

  examples: [
    { args: [99.34, 14.1], result: 7.04539, within: 1e-6, from: 'by hand: 99.34/14.1' },
    { args: [1.4142135623730951, 1], result: 1.414214, within: 1e-6, from: 'definition: a sine' },
  ],
});
