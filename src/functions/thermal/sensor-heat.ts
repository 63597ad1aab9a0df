import { sensorHeat as heatOf } from '../../core/thermal/transient';
import { defineFunction } from '../define';

export const sensorHeat = defineFunction({
  name: 'SENSOR.HEAT',
  family: 'thermal',
  summary: 'Heat that a constant-current sensor makes of its supply.',
  equation: 'P = U_bias·I',
  args: {
    bias: { unit: 'V', symbol: 'U_bias', text: 'Bias voltage at the sensor.', atLeast: 0 },
    supplyCurrent: { unit: 'mA', symbol: 'I', text: 'Constant current.', atLeast: 0 },
  },
  result: { unit: 'mW', symbol: 'P', text: 'Heat in the sensor.' },
  validity: 'Several kelvin on a thin foil in still air; nothing on metal.',
  source: { kind: 'derivation', from: 'electrical power P = U·I, all of it turned into heat' },

  compute: ({ bias, supplyCurrent }) => heatOf(bias, supplyCurrent),

  examples: [
    { args: [11, 4], result: 44, within: 1e-9, from: 'by hand: 11 × 4' },
    { args: [10, '0.02 A'], result: 200, within: 1e-9, from: 'by hand: 10 × 20' },
  ],
});
