import { rovingSpread } from '../../core/mass/several-sensors';
import { defineFunction } from '../define';

export const massSpread = defineFunction({
  name: 'MASS.SPREAD',
  family: 'mass loading',
  summary: 'Spread of a natural frequency over the runs when one sensor roves across a structure.',
  equation: 'Δf/f = 1 − 1/√(1 + r)',
  args: { ratio: { unit: '1', symbol: 'r', text: 'Mass-loading ratio at the antinode.', atLeast: 0 } },
  result: { unit: '%', text: 'Largest difference between two runs.' },
  validity:
    'From a node to an antinode of one mode. Common practice: up to a quarter of the damping ratio does not show, above half of it modes split. Cure: dummy masses at the other points, or rove the hammer.',
  source: { kind: 'derivation', from: 'frequency unchanged at a node, lowered by 1/√(1 + r) at an antinode' },

  compute: ({ ratio }) => rovingSpread(ratio),

  examples: [
    { args: [0.5625], result: 20, within: 1e-12, from: 'by hand: 1 − 1/1.25' },
    { args: [0.0075], result: 0.3729, within: 1e-4, from: 'by hand: r/2 − 3r²/8 = 0.375 − 0.0021 %' },
  ],
});
