import { seriesCorner } from '../../core/frequency/cable';
import { defineFunction } from '../define';

export const seriesLimit = defineFunction({
  name: 'SERIES.LIMIT',
  family: 'frequency span',
  summary: 'Low-pass corner that a series resistance makes with a cable.',
  equation: 'f = 1/(2π·R·C)',
  args: {
    resistance: { unit: 'Ω', symbol: 'R', text: 'Series resistance.', above: 0 },
    capacitance: { unit: 'pF', symbol: 'C', text: 'Capacitance of the cable.', above: 0 },
  },
  result: { unit: 'Hz', symbol: 'f', text: 'Corner (−3 dB).' },
  validity: 'First-order low-pass; 5 % are lost at a third of it.',
  source: { kind: 'derivation', from: 'τ = R·C' },

  compute: ({ resistance, capacitance }) => seriesCorner(resistance, capacitance),

  examples: [
    { args: [100, 10000], result: 159154.9, within: 1e-6, from: 'by hand: τ = 1 µs' },
    { args: [50, 2000], result: 1591549, within: 1e-6, from: 'by hand: τ = 0.1 µs' },
  ],
});
