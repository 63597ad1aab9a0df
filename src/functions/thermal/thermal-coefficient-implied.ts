import { failure } from '../../core/issue';
import { impliedCoefficient } from '../../core/thermal/coefficient';
import { defineFunction } from '../define';

export const thermalCoefficientImplied = defineFunction({
  name: 'THERMAL.COEFFICIENT.IMPLIED',
  family: 'thermal',
  summary: 'Coefficient that a deviation at one temperature would mean if the response were a straight line.',
  equation: 'α = δ/(T − T_cal)',
  args: {
    deviation: { unit: '%', symbol: 'δ', text: 'Deviation at the temperature, zero at calibration.', above: -100 },
    temperature: { unit: '°C', symbol: 'T', text: 'Temperature of the deviation.', atLeast: -273.15 },
    calibrationTemperature: {
      unit: '°C',
      symbol: 'T_cal',
      text: 'Temperature on the calibration certificate.',
      atLeast: -273.15,
      default: 23,
    },
  },
  result: { unit: '%/K', symbol: 'α', text: 'Mean slope between the two temperatures.' },
  validity:
    'For comparing sensors at one temperature. It is no licence to go beyond that temperature: real responses curve, and a line through one point can be wrong by several times.',
  source: { kind: 'derivation', from: 'mean slope between two points' },

  compute: ({ deviation, temperature, calibrationTemperature }) =>
    temperature === calibrationTemperature
      ? failure({ code: 'no-result', rule: 'two different temperatures are needed' })
      : impliedCoefficient(deviation, temperature, calibrationTemperature),

  examples: [
    { args: [7.5, 85], result: 0.120968, within: 1e-5, from: 'by hand: 7.5/62' },
    { args: [-2, 60, 20], result: -0.05, within: 1e-9, from: 'by hand: −2/40' },
  ],
});
