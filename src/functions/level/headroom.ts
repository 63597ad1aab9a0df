import { headroom as margin } from '../../core/level/margin';
import { defineFunction } from '../define';

export const headroom = defineFunction({
  name: 'HEADROOM',
  family: 'level and dynamic range',
  summary: 'Margin of the upper limit over the largest expected peak; negative means clipping.',
  equation: 'M = 20·log₁₀(a_max/a_peak)',
  args: {
    highest: { unit: 'g', symbol: 'a_peak', text: 'Largest expected peak, unfiltered.', above: 0, statistic: 'peak' },
    ceiling: { unit: 'g', symbol: 'a_max', text: 'Upper limit of the channel, peak.', above: 0, statistic: 'peak' },
  },
  result: { unit: 'dB', symbol: 'M', text: 'Headroom.' },
  validity:
    'Levels outside the analysed band count too: they load the sensor and the amplifier before any digital filter.',
  source: { kind: 'derivation', from: 'definition of a level difference of amplitudes' },

  compute: ({ highest, ceiling }) => margin(highest, ceiling),

  examples: [
    { args: [10, 100], result: 20, within: 1e-12, from: 'by hand: ten times is 20 dB' },
    { args: [65, 50], result: -2.2789, within: 1e-4, from: 'by hand: 20·log₁₀ 0.7692308' },
    { args: ['130 g pk-pk', 65], result: 0, within: 1e-12, from: 'by hand: half the peak-to-peak value is the peak' },
  ],
});
