import { failure } from '../../core/issue';
import { zeroOffset } from '../../core/thermal/transient';
import { defineFunction } from '../define';

export const thermalZero = defineFunction({
  name: 'THERMAL.ZERO',
  family: 'thermal',
  summary: 'Largest zero offset of a static-response sensor over a temperature range.',
  equation: 'z·max |T − T_0|',
  args: {
    drift: { unit: 'mg/K', symbol: 'z', text: 'Drift of the zero, either sign.' },
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
  result: { unit: 'g', text: 'Size of the offset.' },
  validity: 'Harmless if removed and inside the input range; it spoils tilt and quasi-static work.',
  source: { kind: 'derivation', from: 'linear drift from the temperature of the zero' },

  compute: ({ drift, low, high, zeroTemperature }) => {
    if (high < low)
      return failure({
        code: 'out-of-range',
        arg: 'high',
        given: high,
        unit: '°C',
        rule: `≥ ${low}`,
      });
    return zeroOffset(drift, low, high, zeroTemperature);
  },

  examples: [
    { args: [0.2, -5, 25], result: 0.0056, within: 1e-9, from: 'by hand: 0.2 mg/K × 28 K' },
    { args: [-1, '20..60 °C', null, 20], result: 0.04, within: 1e-9, from: 'by hand: 1 mg/K × 40 K' },
  ],
});
