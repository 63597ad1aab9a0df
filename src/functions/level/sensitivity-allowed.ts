import { allowedSensitivity } from '../../core/level/ceiling';
import { defineFunction } from '../define';

export const sensitivityAllowed = defineFunction({
  name: 'SENSITIVITY.ALLOWED',
  family: 'level and dynamic range',
  summary: 'Largest sensitivity whose peak still fits an input range.',
  equation: 'S = R/(m·a)',
  args: {
    range: { unit: 'V', symbol: 'R', text: 'Peak voltage of the input range, or swing of the supply.', above: 0 },
    highest: { unit: 'g', symbol: 'a', text: 'Largest expected peak, unfiltered.', above: 0, statistic: 'peak' },
    margin: { unit: '1', symbol: 'm', text: 'Margin over the peak.', atLeast: 1, default: 1.5 },
  },
  result: { unit: 'mV/g', symbol: 'S', text: 'Largest sensitivity over the temperature range.' },
  validity: 'As RANGE.NEEDED, whose inverse it is.',
  source: { kind: 'derivation', from: 'R = m·a·S solved for S' },

  compute: ({ range, highest, margin }) => allowedSensitivity(range, highest, margin),

  examples: [
    { args: [5, 65], result: 51.282051, within: 1e-7, from: 'by hand: 5/97.5' },
    { args: [10, 50, 2], result: 100, within: 1e-6, from: 'by hand: 10/100' },
  ],
});
