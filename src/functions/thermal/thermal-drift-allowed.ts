import { failure } from '../../core/issue';
import { driftForOffset } from '../../core/thermal/transient';
import { defineFunction } from '../define';

export const thermalDriftAllowed = defineFunction({
  name: 'THERMAL.DRIFT.ALLOWED',
  family: 'thermal',
  summary: 'Largest zero drift that keeps an offset over a temperature range.',
  equation: 'z = a/max |T − T_0|',
  args: {
    offset: { unit: 'g', symbol: 'a', text: 'Offset accepted.', atLeast: 0 },
    low: {
      unit: '°C',
      symbol: 'T₁',
      text: 'Lowest temperature of the sensor, or both as a range text.',
      atLeast: -273.15,
      rangeWith: 'high',
    },
    high: { unit: '°C', symbol: 'T₂', text: 'Highest temperature of the sensor.', atLeast: -273.15 },
    zeroTemperature: {
      unit: '°C',
      symbol: 'T_0',
      text: 'Temperature at which the zero was set.',
      atLeast: -273.15,
      default: 23,
    },
  },
  result: { unit: 'mg/K', symbol: 'z', text: 'Size of the drift.' },
  validity: 'As THERMAL.ZERO, whose inverse it is.',
  source: { kind: 'derivation', from: 'z·max |T − T_0| = a solved for z' },

  compute: ({ offset, low, high, zeroTemperature }) => {
    if (high < low)
      return failure({
        code: 'out-of-range',
        arg: 'high',
        given: high,
        unit: '°C',
        rule: `≥ ${low}`,
      });
    return low === zeroTemperature && high === zeroTemperature
      ? failure({ code: 'no-result', rule: 'the range is the temperature of the zero: any drift will do' })
      : driftForOffset(offset, low, high, zeroTemperature);
  },

  examples: [
    { args: [0.0056, -5, 25], result: 0.2, within: 1e-9, from: 'by hand: 5.6 mg / 28 K' },
    { args: [0.01, 23, 73], result: 0.2, within: 1e-9, from: 'by hand: 10 mg / 50 K' },
  ],
});
