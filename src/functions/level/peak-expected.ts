import { cyclesOf } from './cycles';
import { largestPeak } from '../../core/level/statistics';
import { mapped } from '../../core/issue';
import { defineFunction } from '../define';

export const peakExpected = defineFunction({
  name: 'PEAK.EXPECTED',
  family: 'level and dynamic range',
  summary: 'Largest peak to expect from narrow-band random vibration in a given time.',
  equation: 'a = σ·(√(2·ln N) + 0.5772/√(2·ln N)), N = f·T',
  args: {
    rms: { unit: 'g', symbol: 'σ', text: 'R.m.s. level.', above: 0, statistic: 'rms' },
    frequency: {
      unit: 'Hz',
      symbol: 'f',
      text: 'Middle frequency of the response, or upper edge of a wide band.',
      above: 0,
    },
    duration: { unit: 's', symbol: 'T', text: 'Duration.', above: 0 },
  },
  result: { unit: 'g', symbol: 'a', text: 'Mean of the largest peak.' },
  validity: 'Gaussian, Rayleigh peaks, at least ten cycles. About half of all runs exceed it somewhat.',
  source: {
    kind: 'paper',
    cite: 'A. G. Davenport 1964, distribution of the largest value of a random function',
    locator: 'mean of the largest value; no page',
    read: 'from memory',
  },

  compute: ({ rms, frequency, duration }) =>
    mapped(cyclesOf(frequency, duration), (cycles) => rms * largestPeak(cycles)),

  examples: [
    { args: [1, 2000, 60], result: 4.955721, within: 1e-6, from: 'by hand: N = 120000, √(2 ln N) = 4.836450' },
    { args: [2, 100, 600], result: 9.627829, within: 1e-6, from: 'by hand: N = 60000, twice 4.813914' },
  ],
});
