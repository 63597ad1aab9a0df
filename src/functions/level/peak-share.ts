import { shareOutside } from '../../core/level/statistics';
import { defineFunction } from '../define';

export const peakShare = defineFunction({
  name: 'PEAK.SHARE',
  family: 'level and dynamic range',
  summary: 'Share of time in which random vibration exceeds a level, on either side.',
  equation: 'p = erfc(a/(σ·√2))',
  args: {
    rms: { unit: 'g', symbol: 'σ', text: 'R.m.s. level.', above: 0, statistic: 'rms' },
    level: { unit: 'g', symbol: 'a', text: 'Level looked at.', above: 0, statistic: 'peak' },
  },
  result: { unit: '%', symbol: 'p', text: 'Share of time outside ±a.' },
  validity: 'Gaussian, zero mean.',
  source: {
    kind: 'book',
    cite: 'M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions',
    locator: '7.1, error function',
    read: 'from memory',
  },

  compute: ({ rms, level }) => shareOutside(level / rms),

  examples: [
    {
      args: [1, 3],
      result: 0.26997961,
      within: 1e-7,
      from: 'tables of the normal distribution: 0.27 % outside three sigma; digits by Python math.erfc',
    },
    {
      args: [2, 8],
      result: 0.0063342484,
      within: 1e-7,
      from: 'tables of the normal distribution: 63 ppm outside four sigma; digits by Python math.erfc',
    },
    {
      args: [1, 1],
      result: 31.731051,
      within: 1e-7,
      from: 'tables of the normal distribution: 31.73 % outside one sigma; digits by Python math.erfc',
    },
  ],
});
