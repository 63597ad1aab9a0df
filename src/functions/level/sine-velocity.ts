import { velocityOfAcceleration } from '../../core/level/sine';
import { defineFunction } from '../define';

export const sineVelocity = defineFunction({
  name: 'SINE.VELOCITY',
  family: 'level and dynamic range',
  summary: 'Peak velocity of a sine of given acceleration.',
  equation: 'v = a/(2πf)',
  args: {
    frequency: { unit: 'Hz', symbol: 'f', text: 'Frequency of the sine.', above: 0 },
    acceleration: { unit: 'g', symbol: 'a', text: 'Peak acceleration.', above: 0, statistic: 'peak' },
  },
  result: { unit: 'mm/s', symbol: 'v', text: 'Peak velocity.' },
  validity: 'Pure sine.',
  source: { kind: 'derivation', from: 'a = (2πf)²·x = 2πf·v of a sine' },

  compute: ({ frequency, acceleration }) => velocityOfAcceleration(frequency, acceleration),

  examples: [
    { args: [80, 1.2814131853751458], result: 25, within: 1e-6, from: 'by hand, back from 25 mm/s at 80 Hz' },
    { args: [100, 1], result: 15.60777, within: 1e-6, from: 'by hand: 9806.65/628.31853' },
  ],
});
