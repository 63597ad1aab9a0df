import { transverseUncertainty } from '../../core/trust/sources';
import { defineFunction } from '../define';

export const uncertaintyTransverse = defineFunction({
  name: 'UNCERTAINTY.TRANSVERSE',
  family: 'trust',
  summary: 'Standard uncertainty from transverse motion at an unknown angle.',
  equation: 'u = S_t·(a_t/a)/√2',
  args: {
    transverse: { unit: '%', symbol: 'S_t', text: 'Transverse sensitivity of the sensor.', atLeast: 0, atMost: 100 },
    levelRatio: { unit: '1', symbol: 'a_t/a', text: 'Transverse over axial level at the point.', atLeast: 0 },
  },
  result: { unit: '%', symbol: 'u', text: 'Standard uncertainty of the axial level.' },
  validity: 'Where the own axis is quiet the direction fails, not the sensor: turn it, or use a three-axis unit.',
  source: { kind: 'derivation', from: 'a projection S_t·cos θ with θ uniform has the r.m.s. value S_t/√2' },

  compute: ({ transverse, levelRatio }) => transverseUncertainty(transverse, levelRatio),

  examples: [
    { args: [5, 1], result: 3.535534, within: 1e-6, from: 'by hand: 5/√2' },
    { args: [3, 10], result: 21.2132, within: 1e-6, from: 'by hand: 30/√2; the direction is useless' },
  ],
});
