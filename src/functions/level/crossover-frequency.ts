import { crossoverFrequency as crossover } from '../../core/level/sine';
import { defineFunction } from '../define';

export const crossoverFrequency = defineFunction({
  name: 'CROSSOVER.FREQUENCY',
  family: 'level and dynamic range',
  summary: 'Frequency at which a sweep changes from constant displacement to constant acceleration.',
  equation: 'f = √(a/x)/2π',
  args: {
    displacement: { unit: 'mm', symbol: 'x', text: 'Peak displacement.', above: 0, statistic: 'peak' },
    acceleration: { unit: 'g', symbol: 'a', text: 'Peak acceleration.', above: 0, statistic: 'peak' },
  },
  result: { unit: 'Hz', symbol: 'f', text: 'Crossover frequency.' },
  validity: 'Pure sine.',
  source: { kind: 'derivation', from: 'a = (2πf)²·x = 2πf·v of a sine' },

  compute: ({ displacement, acceleration }) => crossover(displacement, acceleration),

  examples: [
    { args: [0.8, 2.0128391246938273], result: 25, within: 1e-6, from: 'by hand, back from 25 Hz' },
    { args: [1, 1], result: 15.76088, within: 1e-6, from: 'by hand: √9806.65/2π' },
  ],
});
