import { failure } from '../../core/issue';
import { accelerationOfDisplacement, accelerationOfVelocity } from '../../core/level/sine';
import { defineFunction } from '../define';

export const levelSine = defineFunction({
  name: 'LEVEL.SINE',
  family: 'level and dynamic range',
  summary:
    'Peak acceleration of a sine given by displacement, velocity or acceleration; of several limits the smallest rules.',
  equation: 'a = min((2πf)²·x, 2πf·v, a₀)',
  args: {
    frequency: { unit: 'Hz', symbol: 'f', text: 'Frequency of the sine.', above: 0 },
    displacement: {
      unit: 'mm',
      symbol: 'x',
      text: 'Peak displacement; write "pk-pk" for a peak-to-peak value.',
      above: 0,
      statistic: 'peak',
      optional: true,
    },
    velocity: { unit: 'mm/s', symbol: 'v', text: 'Peak velocity.', above: 0, statistic: 'peak', optional: true },
    acceleration: { unit: 'g', symbol: 'a₀', text: 'Peak acceleration.', above: 0, statistic: 'peak', optional: true },
  },
  result: { unit: 'g', symbol: 'a', text: 'Peak acceleration at that frequency.' },
  validity:
    'A sweep with crossovers follows the smallest of its limits; evaluate it at each frequency and take the worst.',
  source: { kind: 'derivation', from: 'a = (2πf)²·x = 2πf·v of a sine' },

  compute: ({ frequency, displacement, velocity, acceleration }) => {
    if (displacement === undefined && velocity === undefined && acceleration === undefined)
      return failure({ code: 'missing', arg: 'displacement' });
    return Math.min(
      displacement === undefined ? Infinity : accelerationOfDisplacement(frequency, displacement),
      velocity === undefined ? Infinity : accelerationOfVelocity(frequency, velocity),
      acceleration ?? Infinity,
    );
  },

  examples: [
    { args: [25, 0.8], result: 2.012839, within: 1e-6, from: 'by hand: (157.0796 rad/s)² × 0.8 mm = 19.73921 m/s²' },
    { args: [25, '1.6 mm pk-pk'], result: 2.012839, within: 1e-6, from: 'by hand: half of 1.6 mm peak to peak' },
    { args: [80, null, 25], result: 1.281413, within: 1e-6, from: 'by hand: 502.6548 rad/s × 25 mm/s = 12.56637 m/s²' },
    {
      args: [200, 0.8, null, 5],
      result: 5,
      within: 1e-6,
      from: 'by hand: 0.8 mm would be 128.8 g, so the 5 g limit rules',
    },
  ],
});
