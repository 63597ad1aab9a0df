import { GROWTH_STEP } from '../../core/level/linearity';
import { defineFunction } from '../define';

export const linearityReach = defineFunction({
  name: 'LINEARITY.REACH',
  family: 'level and dynamic range',
  summary: 'Largest level at which growth per 1000 m/s² stays within an error.',
  equation: 'a = e·(1000 m/s²)/|k|',
  args: {
    growth: {
      unit: '%',
      symbol: 'k',
      text: 'Growth of sensitivity per 1000 m/s², either sign.',
      atLeast: -100,
      atMost: 100,
    },
    error: { unit: '%', symbol: 'e', text: 'Error allowed, of the reading.', above: 0 },
  },
  result: { unit: 'g', symbol: 'a', text: 'Largest level.' },
  validity: 'As LINEARITY.GROWTH, whose inverse it is.',
  source: { kind: 'derivation', from: 'e = k·a/(1000 m/s²) solved for a' },

  compute: ({ growth, error }) => (error * GROWTH_STEP) / Math.abs(growth),

  examples: [
    { args: [1, 5], result: 509.8581, within: 1e-6, from: 'by hand: 5000 m/s²/9.80665' },
    { args: [-2, 1], result: 50.98581, within: 1e-6, from: 'by hand: 500 m/s²/9.80665' },
  ],
});
