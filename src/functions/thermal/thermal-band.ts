import { mapped } from '../../core/issue';
import { defineFunction } from '../define';
import { bandOf, RESPONSE_OVER_RANGE } from './response';

export const thermalBand = defineFunction({
  name: 'THERMAL.BAND',
  family: 'thermal',
  summary: 'Smallest and largest deviation of the sensitivity over a temperature range.',
  equation: 'δ′(T) = (1 + δ(T))/(1 + δ(T_cal)) − 1 over T₁…T₂; without a curve δ′ = α·(T − T_cal)',
  args: RESPONSE_OVER_RANGE,
  result: {
    kind: 'row',
    columns: [
      { title: 'low', unit: '%', text: 'Smallest deviation in the range.' },
      { title: 'high', unit: '%', text: 'Largest deviation in the range.' },
    ],
  },
  validity:
    'Temperature of the sensor, not of the chamber. Straight between curve points, every point inside the range counts, renormalised to zero at the calibration temperature, never continued beyond the data.',
  source: {
    kind: 'derivation',
    from: 'S(T) = S_cal·(1 + δ(T)), a piecewise linear δ has its extremes at the ends or at its points',
  },

  compute: (given) => mapped(bandOf(given), ({ low, high }) => [low, high]),

  examples: [
    {
      args: [null, 15, 135, 23, -0.05, 'signed'],
      result: [[-5.6, 0.4]],
      within: 1e-9,
      from: 'by hand: −0.05 × 112 and −0.05 × (−8)',
    },
    {
      args: [null, '15..135 °C', null, null, 0.05],
      result: [[-5.6, 5.6]],
      within: 1e-9,
      from: 'by hand: 0.05 × 112, either way because no sign is known',
    },
    {
      args: ['0:-1; 23:0; 60:1.2; 100:0.4; 150:-3', 15, 135],
      result: [[-1.98, 1.2]],
      within: 1e-9,
      from: 'by hand: 0.4 − 3.4 × 35/50 at 135 °C; the largest is the point at 60 °C, not an end',
    },
    {
      args: ['-50:-9; 0:-4; 25:0; 75:5; 125:9; 150:12', -5, 25],
      result: [[-4.19342, 0.321027]],
      within: 1e-5,
      from: 'by numpy.interp: δ(23) = −0.32 %, (1 − 0.045)/0.9968 − 1 and 1/0.9968 − 1',
    },
  ],
});
