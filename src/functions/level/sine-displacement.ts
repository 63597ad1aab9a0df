import { displacementOfAcceleration } from '../../core/level/sine';
import { defineFunction } from '../define';

export const sineDisplacement = defineFunction({
  name: 'SINE.DISPLACEMENT',
  family: 'level and dynamic range',
  summary: 'Peak displacement of a sine of given acceleration.',
  equation: 'x = a/(2πf)²',
  args: {
    frequency: { unit: 'Hz', symbol: 'f', text: 'Frequency of the sine.', above: 0 },
    acceleration: { unit: 'g', symbol: 'a', text: 'Peak acceleration.', above: 0, statistic: 'peak' },
  },
  result: { unit: 'mm', symbol: 'x', text: 'Peak displacement.' },
  validity: 'Pure sine.',
  source: { kind: 'derivation', from: 'a = (2πf)²·x = 2πf·v of a sine' },

  compute: ({ frequency, acceleration }) => displacementOfAcceleration(frequency, acceleration),

  examples: [
    { args: [25, 2.0128391246938273], result: 0.8, within: 1e-6, from: 'by hand, back from 0.8 mm at 25 Hz' },
    { args: [1, 1], result: 248.4053, within: 1e-6, from: 'by hand: 9806.65/39.478418' },
  ],
});
