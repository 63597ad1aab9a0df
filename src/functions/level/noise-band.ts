import { bandNoise } from '../../core/level/noise';
import { defineFunction } from '../define';
import { ANALYSED_BAND, inBand } from './band';
import { onLogAxes } from './density';

export const noiseBand = defineFunction({
  name: 'NOISE.BAND',
  family: 'level and dynamic range',
  summary: 'R.m.s. noise of a sensor in the analysed band, from its noise density.',
  equation: 'σ = √∫d(f)² df from f₁ to f₂; in one Hann line σ = d(f₁)·√(1.5·Δf)',
  args: {
    density: { kind: 'curve', x: 'Hz', y: 'µg/√Hz', symbol: 'd', text: 'Noise density against frequency.' },
    ...ANALYSED_BAND,
  },
  result: { unit: 'g', symbol: 'σ', text: 'R.m.s. noise.' },
  validity:
    'Stationary noise, data-sheet density at room temperature. Straight lines on log-log axes; below the table its first slope goes on (a first slope that falls towards low frequency counts as flat), above it the last value.',
  source: { kind: 'derivation', from: "Parseval's theorem; equivalent noise bandwidth of a Hann window 1.5 lines" },

  compute: ({ density, low, high, lineSpacing }) => {
    const table = onLogAxes(density, 'density', 'µg/√Hz');
    return table.ok ? inBand(low, high, () => bandNoise(table.value, low, high, lineSpacing)) : table;
  },

  examples: [
    {
      args: ['1:60; 10:15; 100:5; 1000:3; 10000:3', 1, 10000],
      result: 0.0003236690191581034,
      within: 1e-9,
      from: 'adaptive quadrature of the squared density, scipy.integrate.quad',
    },
    {
      args: ['1:60; 10:15; 100:5; 1000:3; 10000:3', 0.2, 50],
      result: 0.0001312658787045934,
      within: 1e-9,
      from: 'adaptive quadrature of the squared density, begun below the table',
    },
    { args: ['100:3', 0, 10000], result: 0.0003, within: 1e-12, from: 'by hand, white: 3 µg/√Hz × √10000 Hz' },
    {
      args: ['1:60; 10:15; 100:5', 10, 500, 1],
      result: 1.8371173e-5,
      within: 1e-8,
      from: 'by hand, one Hann line: 15 µg/√Hz × √1.5 Hz',
    },
  ],
});
