import { seriesCorner } from '../../core/frequency/cable';
import { defineFunction } from '../define';

export const cornerFromParts = defineFunction({
  name: 'CORNER.FROM.PARTS',
  family: 'frequency span',
  summary: 'Corner of a resistance and a capacitance, such as a charge amplifier’s feedback.',
  equation: 'f_c = 1/(2π·R·C)',
  args: {
    resistance: { unit: 'MΩ', symbol: 'R', text: 'Resistance.', above: 0 },
    capacitance: { unit: 'pF', symbol: 'C', text: 'Capacitance.', above: 0 },
  },
  result: { unit: 'Hz', symbol: 'f_c', text: 'Corner frequency.' },
  validity: 'A hot, leaky sensor shortens the time constant of a charge amplifier.',
  source: { kind: 'derivation', from: 'τ = R·C' },

  compute: ({ resistance, capacitance }) => seriesCorner(resistance, capacitance),

  examples: [
    { args: [1000, 1000], result: 0.1591549, within: 1e-6, from: 'by hand: τ = 1 s' },
    { args: [10000, 100], result: 0.1591549, within: 1e-6, from: 'by hand: τ = 1 s' },
    { args: [100, 50], result: 31.83099, within: 1e-6, from: 'by hand: τ = 5 ms' },
  ],
});
