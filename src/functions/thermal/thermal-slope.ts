import { mapped } from '../../core/issue';
import { thermalBand } from '../../core/thermal/band';
import { steepestSlope } from '../../core/thermal/slope';
import { RESPONSE_OVER_RANGE } from './response';
import { defineFunction } from '../define';

export const thermalSlope = defineFunction({
  name: 'THERMAL.SLOPE',
  family: 'thermal',
  summary: 'Steepest change of the deviation per kelvin over a temperature range.',
  equation: 'max |dδ′/dT|',
  args: {
    deviation: { kind: 'curve', x: '°C', y: '%', text: 'Deviation of the sensitivity against temperature.' },
    low: RESPONSE_OVER_RANGE.low,
    high: RESPONSE_OVER_RANGE.high,
    calibrationTemperature: RESPONSE_OVER_RANGE.calibrationTemperature,
  },
  result: { unit: '%/K', text: 'Size of the steepest slope.' },
  validity: 'Straight between curve points, never continued beyond them.',
  source: { kind: 'derivation', from: 'slope of the pieces of the renormalised curve' },

  compute: ({ deviation, low, high, calibrationTemperature }) =>
    mapped(thermalBand(deviation, low, high, calibrationTemperature), () =>
      steepestSlope(deviation, low, high, calibrationTemperature),
    ),

  examples: [
    {
      args: ['0:-1; 23:0; 60:1.2; 100:0.4; 150:-3', 15, 135],
      result: 0.068,
      within: 1e-9,
      from: 'by hand: 3.4 % over 50 K',
    },
    {
      args: ['0:-4; 25:0; 75:5', 10, 60, 25],
      result: 0.16,
      within: 1e-9,
      from: 'by hand: 4 % over 25 K, the other piece 0.1',
    },
  ],
});
