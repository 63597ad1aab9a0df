import { defineFunction } from '../define';

export const rangeNeeded = defineFunction({
  name: 'RANGE.NEEDED',
  family: 'level and dynamic range',
  summary: 'Input range that a peak needs.',
  equation: 'R = m·a·S',
  args: {
    highest: { unit: 'g', symbol: 'a', text: 'Largest expected peak, unfiltered.', above: 0, statistic: 'peak' },
    sensitivity: {
      unit: 'mV/g',
      symbol: 'S',
      text: 'Largest sensitivity over the temperature range; charge: pC/g times mV/pC.',
      above: 0,
    },
    margin: { unit: '1', symbol: 'm', text: 'Margin over the peak.', atLeast: 1, default: 1.5 },
  },
  result: { unit: 'V', symbol: 'R', text: 'Peak voltage; take the next range above.' },
  validity: 'Margin of 1.5 by default (common practice, no source).',
  source: { kind: 'derivation', from: 'V = a·S' },

  compute: ({ highest, sensitivity, margin }) => margin * highest * sensitivity,

  examples: [
    { args: [65, 100], result: 9.75, within: 1e-6, from: 'by hand: 1.5 × 65 × 0.1' },
    { args: [30, 400, 1], result: 12, within: 1e-6, from: 'by hand: 30 × 0.4' },
  ],
});
