import { rootSumSquare } from '../../core/level/noise';
import { defineFunction } from '../define';

export const noiseSum = defineFunction({
  name: 'NOISE.SUM',
  family: 'level and dynamic range',
  summary: 'Total r.m.s. noise of independent parts: sensor, amplifier, input.',
  equation: 'σ = √(σ₁² + σ₂² + …)',
  args: {
    parts: {
      kind: 'list',
      unit: 'g',
      symbol: 'σᵢ',
      text: 'R.m.s. noise of each part in the same band.',
      atLeast: 0,
      repeating: true,
    },
  },
  result: { unit: 'g', symbol: 'σ', text: 'Total r.m.s. noise.' },
  validity: 'Uncorrelated parts, each in the same band and at the same point.',
  source: { kind: 'derivation', from: 'mean squares of uncorrelated signals add' },

  compute: ({ parts }) => rootSumSquare(parts),

  examples: [
    { args: [0.003, 0.004], result: 0.005, within: 1e-12, from: 'by hand: 3, 4, 5' },
    { args: ['0.35 mg; 2.236 mg'], result: 0.0022632269, within: 1e-8, from: 'by hand: √(0.1225 + 4.999696) mg' },
    { args: [[[1], [2], [2]]], result: 3, within: 1e-12, from: 'by hand: √(1 + 4 + 4)' },
  ],
});
