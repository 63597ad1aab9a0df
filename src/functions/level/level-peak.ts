import { defineFunction } from '../define';

export const levelPeak = defineFunction({
  name: 'LEVEL.PEAK',
  family: 'level and dynamic range',
  summary: 'Peak to plan for, from an r.m.s. level and a crest factor.',
  equation: 'a = k·σ',
  args: {
    rms: { unit: 'g', symbol: 'σ', text: 'R.m.s. level.', above: 0, statistic: 'rms' },
    crestFactor: { unit: '1', symbol: 'k', text: 'Crest factor.', atLeast: 1, default: 3 },
  },
  result: { unit: 'g', symbol: 'a', text: 'Peak level.' },
  validity:
    'The default of 3 is for Gaussian vibration and is exceeded 0.27 % of the time; a shaker that clips its drive at 3 does not clip the response.',
  source: { kind: 'practice', note: 'common practice, no source' },

  compute: ({ rms, crestFactor }) => crestFactor * rms,

  examples: [
    { args: [14.1], result: 42.3, within: 1e-6, from: 'by hand: 3 × 14.1' },
    { args: [10, 1.41421356237], result: 14.14214, within: 1e-6, from: 'by hand: a sine of 10 g r.m.s.' },
  ],
});
