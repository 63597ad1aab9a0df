import { defineFunction } from '../define';

export const linearityLevel = defineFunction({
  name: 'LINEARITY.LEVEL',
  family: 'level and dynamic range',
  summary: 'Smallest level at which linearity in percent of full scale stays within an error.',
  equation: 'a = λ·a_fs/e',
  args: {
    linearity: { unit: '%', symbol: 'λ', text: 'Linearity, percent of full scale.', above: 0, below: 100 },
    fullScale: { unit: 'g', symbol: 'a_fs', text: 'Full scale of the sensor.', above: 0, statistic: 'peak' },
    error: { unit: '%', symbol: 'e', text: 'Error allowed, of the reading.', above: 0 },
  },
  result: { unit: 'g', symbol: 'a', text: 'Smallest level.' },
  validity: 'As LINEARITY.SCALE, whose inverse it is.',
  source: { kind: 'derivation', from: 'e = λ·a_fs/a solved for a' },

  compute: ({ linearity, fullScale, error }) => (linearity * fullScale) / error,

  examples: [
    { args: [1, 50, 5], result: 10, within: 1e-6, from: 'by hand: 0.5/0.05' },
    { args: [2, 500, 10], result: 100, within: 1e-6, from: 'by hand: 10/0.1' },
  ],
});
