import { mapped } from '../../core/issue';
import { bandNoise } from '../../core/level/noise';
import { extendedValue } from '../../core/level/spectrum';
import { fromSi } from '../../core/units';
import { inBand } from './band';
import { onLogAxes } from './density';
import { logPoints, POINTS } from './points';
import { defineFunction } from '../define';

export const noiseCurve = defineFunction({
  name: 'NOISE.CURVE',
  family: 'level and dynamic range',
  summary:
    'Table of a sensor’s noise over the band: density, and r.m.s. noise from the lower edge up to each frequency.',
  equation: 'd(f) and σ(f) = √∫d² df from f₁ to f',
  args: {
    density: { kind: 'curve', x: 'Hz', y: 'µg/√Hz', symbol: 'd', text: 'Noise density against frequency.' },
    low: { unit: 'Hz', symbol: 'f₁', text: 'Lower edge.', above: 0, rangeWith: 'high' },
    high: { unit: 'Hz', symbol: 'f₂', text: 'Upper edge.', above: 0 },
    points: POINTS,
  },
  result: { kind: 'block', text: 'A heading row, then frequency in Hz, density in µg/√Hz and r.m.s. noise in g.' },
  validity: 'As NOISE.BAND.',
  source: { kind: 'derivation', from: 'Parseval’s theorem' },

  compute: ({ density, low, high, points }) => {
    const table = onLogAxes(density, 'density', 'µg/√Hz');
    if (!table.ok) return table;
    return mapped(
      inBand(low, high, () => logPoints(low, high, points)),
      (frequencies) => [
        ['Hz', 'µg/√Hz', 'g r.m.s. up to here'],
        ...frequencies.map((frequency) => [
          frequency,
          fromSi(extendedValue(density, frequency), 'µg/√Hz'),
          fromSi(bandNoise(density, low, frequency), 'g'),
        ]),
      ],
    );
  },

  examples: [
    {
      args: ['1:10; 1000:10', 1, 101, 2],
      result: [
        ['Hz', 'µg/√Hz', 'g r.m.s. up to here'],
        [1, 10, 0],
        [101, 10, 0.0001],
      ],
      within: 1e-12,
      from: 'by hand, white: 10 µg/√Hz × √100 Hz',
    },
    {
      args: ['10:20; 1000:2', 10, 1000, 3],
      result: [
        ['Hz', 'µg/√Hz', 'g r.m.s. up to here'],
        [10, 20, 0],
        [100, 6.3245553, 9.597052e-5],
        [1000, 2, 0.00013572281],
      ],
      within: 1e-5,
      from: 'by hand: d² = 4000/f, σ² = 4000·ln(f/10)',
    },
  ],
});
