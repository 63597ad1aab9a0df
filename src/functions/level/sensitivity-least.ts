import { sensitivityLeastOverTemperature } from '../../core/level/sensitivity';
import { defineFunction } from '../define';

export const sensitivityLeast = defineFunction({
  name: 'SENSITIVITY.LEAST',
  family: 'level and dynamic range',
  summary: 'The smallest sensitivity over the temperature range.',
  equation: 'S_min = S · (1 + min(0, δ_low))',
  args: {
    sensitivity: { unit: 'mV/g', symbol: 'S', text: 'Sensitivity at the calibration temperature.', above: 0 },
    deviation: {
      unit: '%',
      symbol: 'δ_low',
      text: 'Lowest thermal deviation; where it is not known the sensitivity itself is returned.',
      forgiving: true,
    },
  },
  result: {
    unit: 'mV/g',
    symbol: 'S_min',
    text: 'For noise: a lower sensitivity makes input noise larger in acceleration.',
  },
  validity: 'Never above the sensitivity at the calibration temperature, since the range may leave it out.',
  source: { kind: 'derivation', from: 'S(T) = S·(1 + δ(T)), the definition of the thermal deviation δ' },
  compute: ({ sensitivity, deviation }) => sensitivityLeastOverTemperature(sensitivity, deviation),
  examples: [
    { args: [100, -4], result: 96, within: 1e-12, from: 'by hand: 100 × 0.96' },
    { args: [100, 4], result: 100, within: 1e-12, from: 'by hand: the calibration temperature itself gives 100' },
    { args: [100, null], result: 100, within: 1e-12, from: 'by definition: without a deviation the reference holds' },
  ],
});
