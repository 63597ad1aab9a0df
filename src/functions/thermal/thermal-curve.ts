import { failure, mapped } from '../../core/issue';
import { fromSi } from '../../core/units';
import { deviationTable, MOST_ROWS } from '../../core/thermal/table';
import { RESPONSE_OVER_RANGE } from './response';
import { defineFunction } from '../define';

export const thermalCurve = defineFunction({
  name: 'THERMAL.CURVE',
  family: 'thermal',
  summary: 'The deviation of the sensitivity against temperature as a table, zero at the calibration temperature.',
  equation: 'δ′(T) = (1 + δ(T))/(1 + δ(T_cal)) − 1',
  args: {
    deviation: { kind: 'curve', x: '°C', y: '%', text: 'Deviation of the sensitivity against temperature.' },
    low: RESPONSE_OVER_RANGE.low,
    high: RESPONSE_OVER_RANGE.high,
    calibrationTemperature: RESPONSE_OVER_RANGE.calibrationTemperature,
    step: {
      unit: 'K',
      text: 'Distance of the rows; curve points and both ends always have one. Blank: only these.',
      above: 0,
      optional: true,
    },
  },
  result: { kind: 'block', text: 'Temperature in °C and deviation in %, one row each, rising.' },
  validity: 'For charts and for reading off a correction. Straight between curve points, never continued beyond them.',
  source: { kind: 'derivation', from: 'ratio of two sensitivities of one curve' },

  compute: ({ deviation, low, high, calibrationTemperature, step }) => {
    if (step !== undefined && (high - low) / step > MOST_ROWS) {
      return failure({
        code: 'out-of-range',
        arg: 'step',
        given: step,
        unit: 'K',
        rule: `≥ ${(high - low) / MOST_ROWS}`,
      });
    }
    return mapped(deviationTable(deviation, low, high, calibrationTemperature, step), (rows) =>
      rows.map(([temperature, value]) => [temperature, fromSi(value, '%')]),
    );
  },

  examples: [
    {
      args: ['0:-1; 23:0; 60:1.2; 100:0.4; 150:-3', 23, 100],
      result: [
        [23, 0],
        [60, 1.2],
        [100, 0.4],
      ],
      within: 1e-9,
      from: 'by hand: the points of the curve itself',
    },
    {
      args: ['0:-4; 25:0; 75:5', 0, 75, 75, 50],
      result: [
        [0, -8.57143],
        [25, -4.7619],
        [50, -2.38095],
        [75, 0],
      ],
      within: 1e-5,
      from: 'by hand: 0.96, 1 and 1.025 over 1.05',
    },
  ],
});
