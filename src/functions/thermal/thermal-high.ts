import { mapped } from '../../core/issue';
import { defineFunction } from '../define';
import { bandOf, RESPONSE_OVER_RANGE } from './response';

export const thermalHigh = defineFunction({
  name: 'THERMAL.HIGH',
  family: 'thermal',
  summary: 'Largest deviation of the sensitivity over a temperature range.',
  equation: 'δ′(T) = (1 + δ(T))/(1 + δ(T_cal)) − 1 over T₁…T₂; without a curve δ′ = α·(T − T_cal)',
  args: RESPONSE_OVER_RANGE,
  result: { unit: '%', text: 'Largest deviation in the range.' },
  validity:
    'Temperature of the sensor, not of the chamber. Straight between curve points, every point inside the range counts, renormalised to zero at the calibration temperature, never continued beyond the data.',
  source: {
    kind: 'derivation',
    from: 'S(T) = S_cal·(1 + δ(T)), a piecewise linear δ has its extremes at the ends or at its points',
  },

  compute: (given) => mapped(bandOf(given), (band) => band.high),

  examples: [
    {
      args: ['0:-1; 23:0; 60:1.2; 100:0.4; 150:-3', 15, 135],
      result: 1.2,
      within: 1e-9,
      from: 'by hand: the point at 60 °C',
    },
    { args: [null, 15, 135, 23, -0.05, 'signed'], result: 0.4, within: 1e-9, from: 'by hand: −0.05 × (−8)' },
  ],
});
