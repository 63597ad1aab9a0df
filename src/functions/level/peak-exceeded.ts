import { multipleExceeded } from '../../core/level/statistics';
import { defineFunction } from '../define';

export const peakExceeded = defineFunction({
  name: 'PEAK.EXCEEDED',
  family: 'level and dynamic range',
  summary: 'Level that random vibration exceeds for a given share of time, on either side.',
  equation: 'erfc(a/(σ·√2)) = p',
  args: {
    rms: { unit: 'g', symbol: 'σ', text: 'R.m.s. level.', above: 0, statistic: 'rms' },
    share: { unit: '%', symbol: 'p', text: 'Share of time outside ±a.', above: 0, below: 100 },
  },
  result: { unit: 'g', symbol: 'a', text: 'Level.' },
  validity: 'As PEAK.SHARE, whose inverse it is.',
  source: {
    kind: 'book',
    cite: 'M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions',
    locator: '7.1, error function',
    read: 'from memory',
  },

  compute: ({ rms, share }) => rms * multipleExceeded(share),

  examples: [
    {
      args: [1, 5],
      result: 1.959964,
      within: 1e-7,
      from: 'tables of the normal distribution: 95 % inside 1.95996 sigma',
    },
    {
      args: [2, 1],
      result: 5.1516586,
      within: 1e-7,
      from: 'tables of the normal distribution: 99 % inside 2.575829 sigma',
    },
  ],
});
