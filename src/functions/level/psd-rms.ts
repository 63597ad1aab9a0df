import { failure, outcome } from '../../core/issue';
import { tableArea } from '../../core/level/spectrum';
import { onLogAxes } from './density';
import { defineFunction } from '../define';

export const psdRms = defineFunction({
  name: 'PSD.RMS',
  family: 'level and dynamic range',
  summary: 'R.m.s. acceleration of a spectrum, from its breakpoints.',
  equation: 'σ = √ΣA, A = P₁·f₁/(n+1)·[(f₂/f₁)^(n+1) − 1], n = ln(P₂/P₁)/ln(f₂/f₁); A = P₁·f₁·ln(f₂/f₁) for n = −1',
  args: {
    spectrum: {
      kind: 'curve',
      x: 'Hz',
      y: 'g²/Hz',
      symbol: 'P',
      text: 'Acceleration spectral density against frequency.',
    },
    low: {
      unit: 'Hz',
      symbol: 'f₁',
      text: 'Lower edge of the part wanted; blank: the whole spectrum.',
      above: 0,
      optional: true,
    },
    high: {
      unit: 'Hz',
      symbol: 'f₂',
      text: 'Upper edge of the part wanted; blank: the whole spectrum.',
      above: 0,
      optional: true,
    },
  },
  result: { unit: 'g', symbol: 'σ', text: 'R.m.s. acceleration.' },
  validity:
    'Straight lines on log-log axes between breakpoints; nothing outside them. Straight lines on linear axes would read about 8 % high on a usual spectrum.',
  source: { kind: 'derivation', from: 'Parseval: σ² = ∫P df; area under P = P₁·(f/f₁)^n' },

  compute: ({ spectrum, low, high }) => {
    const table = onLogAxes(spectrum, 'spectrum', 'g²/Hz');
    if (!table.ok) return table;
    const area = tableArea(spectrum, 1, low ?? 0, high ?? Infinity);
    return area > 0
      ? outcome(Math.sqrt(area))
      : failure({ code: 'no-result', rule: 'the band holds no part of the spectrum' });
  },

  examples: [
    {
      args: ['20:0.026; 50:0.16; 800:0.16; 2000:0.026'],
      result: 14.1,
      within: 0.0036,
      from: 'GSFC-STD-7000 qualification spectrum, total printed there as 14.1 (breakpoints from memory)',
    },
    {
      args: ['10:0.015; 40:0.015; 500:0.00015'],
      result: 1.04,
      within: 0.005,
      from: 'MIL-STD-810F truck, vertical, total printed there as 1.04 (breakpoints from memory)',
    },
    { args: ['10:0.1; 1000:0.001'], result: 2.145966, within: 1e-6, from: 'by hand, 1/f: √ln 100' },
    { args: ['10:0.01; 110:0.01', 60], result: 0.7071068, within: 1e-6, from: 'by hand, flat: √(0.01 × 50)' },
  ],
});
