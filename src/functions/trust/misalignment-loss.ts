import { misalignmentLoss as lossOf } from '../../core/trust/sources';
import { defineFunction } from '../define';

export const misalignmentLoss = defineFunction({
  name: 'MISALIGNMENT.LOSS',
  family: 'trust',
  summary: 'Loss of level by an angle between the sensor’s axis and the intended one.',
  equation: '1 − cos θ',
  args: { angle: { unit: 'deg', symbol: 'θ', text: 'Angle between both axes.', atLeast: 0, atMost: 90 } },
  result: { unit: '%', text: 'Loss of the axial level.' },
  validity: 'The motion across the axis leaks in besides with sin θ: enter it as a transverse contribution.',
  source: { kind: 'derivation', from: 'projection on the sensor’s axis' },

  compute: ({ angle }) => lossOf(angle),

  examples: [
    { args: [60], result: 50, within: 1e-9, from: 'by hand: 1 − 0.5' },
    { args: [3], result: 0.137047, within: 1e-5, from: 'by hand: θ²/2 − θ⁴/24 with θ = 0.0523599' },
  ],
});
