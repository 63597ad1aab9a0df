import { failure } from '../../core/issue';
import { allowedCoefficient } from '../../core/thermal/coefficient';
import { RESPONSE_OVER_RANGE } from './response';
import { defineFunction } from '../define';

export const thermalCoefficientAllowed = defineFunction({
  name: 'THERMAL.COEFFICIENT.ALLOWED',
  family: 'thermal',
  summary: 'Largest temperature coefficient that keeps a tolerance over a temperature range.',
  equation: '|α| = tol / max |T − T_cal|',
  args: {
    tolerance: { unit: '%', symbol: 'tol', text: 'Largest deviation allowed either way.', above: 0, below: 100 },
    low: RESPONSE_OVER_RANGE.low,
    high: RESPONSE_OVER_RANGE.high,
    calibrationTemperature: RESPONSE_OVER_RANGE.calibrationTemperature,
  },
  result: { unit: '%/K', symbol: '|α|', text: 'Size of the coefficient, either sign.' },
  validity: 'A response that is a straight line. Hot ranges want a curve instead.',
  source: { kind: 'derivation', from: '|α·(T − T_cal)| ≤ tol at the farther end' },

  compute: ({ tolerance, low, high, calibrationTemperature }) => {
    if (high < low)
      return failure({
        code: 'out-of-range',
        arg: 'high',
        given: high,
        unit: '°C',
        rule: `≥ ${low}`,
      });
    const allowed = allowedCoefficient(tolerance, low, high, calibrationTemperature);
    return Number.isFinite(allowed)
      ? allowed
      : failure({ code: 'no-result', rule: 'the range is the calibration temperature: any coefficient will do' });
  },

  examples: [
    { args: [5, 15, 135], result: 0.0446429, within: 1e-5, from: 'by hand: 5/112' },
    { args: [2, '-30..40 °C', null, 20], result: 0.04, within: 1e-9, from: 'by hand: 2/50, the cold end is farther' },
  ],
});
