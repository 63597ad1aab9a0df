import { sensitivityMostOverTemperature } from '../../core/level/sensitivity';
import { defineFunction } from '../define';

export const sensitivityMost = defineFunction({
  name: 'SENSITIVITY.MOST',
  family: 'level and dynamic range',
  summary: 'The largest sensitivity over the temperature range.',
  equation: 'S_max = S · (1 + max(0, δ_high))',
  args: {
    sensitivity: { unit: 'mV/g', symbol: 'S', text: 'Sensitivity at the calibration temperature.', above: 0 },
    deviation: {
      unit: '%',
      symbol: 'δ_high',
      text: 'Highest thermal deviation; where it is not known the sensitivity itself is returned.',
      forgiving: true,
    },
  },
  result: {
    unit: 'mV/g',
    symbol: 'S_max',
    text: 'For the upper limit: a higher sensitivity reaches the input range sooner.',
  },
  validity: 'Never below the sensitivity at the calibration temperature, since the range may leave it out.',
  source: { kind: 'derivation', from: 'S(T) = S·(1 + δ(T)), the definition of the thermal deviation δ' },
  compute: ({ sensitivity, deviation }) => sensitivityMostOverTemperature(sensitivity, deviation),
  examples: [
    { args: [100, 10], result: 110, within: 1e-12, from: 'by hand: 100 × 1.10' },
    { args: [100, -4], result: 100, within: 1e-12, from: 'by hand: the calibration temperature itself gives 100' },
    { args: [100, null], result: 100, within: 1e-12, from: 'by definition: without a deviation the reference holds' },
  ],
});
