import { cornerForRamp as cornerOf } from '../../core/thermal/transient';
import { defineFunction } from '../define';

export const cornerForRamp = defineFunction({
  name: 'CORNER.FOR.RAMP',
  family: 'thermal',
  summary: 'Lowest low corner that keeps the false output of a temperature ramp.',
  equation: 'f_c = s_T·R/(2π·a)',
  args: {
    sensitivity: { unit: 'mg/K', symbol: 's_T', text: 'Transient temperature sensitivity of the sensor.', atLeast: 0 },
    rampRate: { unit: 'K/min', symbol: 'R', text: 'Steady rate of the temperature, its size.', atLeast: 0 },
    allowedError: { unit: 'g', symbol: 'a', text: 'False acceleration accepted.', above: 0 },
  },
  result: { unit: 'Hz', symbol: 'f_c', text: 'Low corner (−3 dB).' },
  validity: 'As THERMAL.RAMP, whose inverse it is. Long time constants and fast thermal cycles fight each other.',
  source: {
    kind: 'derivation',
    from: 'slope s_T·R through one high-pass pole of time constant τ = 1/(2πf_c) settles at s_T·R·τ',
  },

  compute: ({ sensitivity, rampRate, allowedError }) => cornerOf(sensitivity, rampRate, allowedError),

  examples: [
    { args: [50.98581065, 5, 0.0001], result: 6.7622, within: 1e-5, from: 'by hand: 0.0416667/(2π × 0.000980665)' },
    { args: [60, 1, 0.001], result: 0.159155, within: 1e-5, from: 'by hand: 1 mg/s over 2π × 1 mg' },
  ],
});
