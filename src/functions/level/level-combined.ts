import { combinedPeak, combinedRms } from '../../core/level/statistics';
import { defineFunction } from '../define';

export const levelCombined = defineFunction({
  name: 'LEVEL.COMBINED',
  family: 'level and dynamic range',
  summary: 'R.m.s. and planning peak of a sine on top of random vibration.',
  equation: 'σ_c = √(A²/2 + σ²), a = A + k·σ',
  args: {
    sine: { unit: 'g', symbol: 'A', text: 'Peak of the sine.', above: 0, statistic: 'peak' },
    random: { unit: 'g', symbol: 'σ', text: 'R.m.s. of the random part.', above: 0, statistic: 'rms' },
    multiple: { unit: '1', symbol: 'k', text: 'Multiple of the random r.m.s. planned for.', atLeast: 1, default: 3 },
  },
  result: {
    kind: 'row',
    columns: [
      { title: 'rms', unit: 'g', text: 'R.m.s. of both.' },
      { title: 'peak', unit: 'g', text: 'Peak to plan for.' },
    ],
  },
  validity: 'Uncorrelated parts, both at the same point. The peak is common practice, no source.',
  source: { kind: 'derivation', from: 'mean squares add; peaks add in the worst case' },

  compute: ({ sine, random, multiple }) => [combinedRms(sine, random), combinedPeak(sine, random, multiple)],

  examples: [
    { args: [10, 5], result: [[8.660254, 25]], within: 1e-7, from: 'by hand: √(50 + 25) and 10 + 15' },
    { args: [4, 1, 4], result: [[3, 8]], within: 1e-12, from: 'by hand: √(8 + 1) and 4 + 4' },
  ],
});
