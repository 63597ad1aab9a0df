import { mapped, outcome } from '../../core/issue';
import { isCoefficient } from '../../core/thermal/band';
import { coefficientWindow, curveWindow } from '../../core/thermal/window';
import { responseOf, RESPONSE_OVER_RANGE } from './response';
import { defineFunction } from '../define';

export const thermalWindow = defineFunction({
  name: 'THERMAL.WINDOW',
  family: 'thermal',
  summary: 'Temperature range round the calibration temperature in which the deviation keeps a tolerance.',
  equation: '|δ′(T)| ≤ tol, contiguous round T_cal',
  args: {
    deviation: RESPONSE_OVER_RANGE.deviation,
    tolerance: { unit: '%', symbol: 'tol', text: 'Largest deviation allowed either way.', above: 0, below: 100 },
    calibrationTemperature: RESPONSE_OVER_RANGE.calibrationTemperature,
    coefficient: RESPONSE_OVER_RANGE.coefficient,
  },
  result: {
    kind: 'row',
    columns: [
      { title: 'low', unit: '°C', text: 'Lowest temperature.' },
      { title: 'high', unit: '°C', text: 'Highest temperature.' },
    ],
  },
  validity:
    'Inverse of THERMAL.WORST. Cut at the ends of the curve; operating limits of sensor, mount and cable come on top.',
  source: { kind: 'derivation', from: 'crossing of a straight piece of the curve with (1 ± tol)·(1 + δ(T_cal)) − 1' },

  compute: ({ deviation, tolerance, calibrationTemperature, coefficient }) => {
    const response = responseOf(deviation, coefficient, 'unsigned');
    if (!response.ok) return response;
    const window = isCoefficient(response.value)
      ? outcome(coefficientWindow(response.value.perKelvin, tolerance, calibrationTemperature))
      : curveWindow(response.value, tolerance, calibrationTemperature);
    return mapped(window, ({ low, high }) => [low, high]);
  },

  examples: [
    {
      args: ['-50:-9; 0:-4; 25:0; 75:5; 125:9; 150:12', 5],
      result: [[-13.04, 71.64]],
      within: 1e-6,
      from: 'by scipy brentq on the interpolated, renormalised curve',
    },
    { args: [null, 2, 20, 0.05], result: [[-20, 60]], within: 1e-9, from: 'by hand: 2/0.05 = 40 K either way' },
    {
      args: ['0:-1; 23:0; 60:1.2; 100:0.4; 150:-3', 3],
      result: [[0, 150]],
      within: 1e-9,
      from: 'by hand: 3 % is only reached at 150 °C; cut at 0 °C',
    },
  ],
});
