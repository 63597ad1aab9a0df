import { errorOfGrowth } from '../../core/level/linearity';
import { defineFunction } from '../define';

export const linearityGrowth = defineFunction({
  name: 'LINEARITY.GROWTH',
  family: 'level and dynamic range',
  summary: 'Linearity error at a level, for a data sheet that states growth per 1000 m/s².',
  equation: 'e = k·a/(1000 m/s²)',
  args: {
    growth: { unit: '%', symbol: 'k', text: 'Growth of sensitivity per 1000 m/s².', atLeast: -100, atMost: 100 },
    level: { unit: 'g', symbol: 'a', text: 'Level reported.', above: 0, statistic: 'peak' },
  },
  result: { unit: '%', symbol: 'e', text: 'Excess of the reading.' },
  validity: 'Usual for charge output. Never mix with percent of full scale.',
  source: { kind: 'derivation', from: 'S(a) = S₀·(1 + k·a)' },

  compute: ({ growth, level }) => errorOfGrowth(growth, level),

  examples: [
    { args: [1, '1000 m/s²'], result: 1, within: 1e-6, from: 'definition: 1 % at 1000 m/s²' },
    { args: [0.5, 500], result: 2.451662, within: 1e-6, from: 'by hand: 0.5 × 4.903325' },
  ],
});
