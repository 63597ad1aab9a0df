import { RESPONSE, RESPONSE_READING } from './response-table';
import { responseWithMass } from './response-with-mass';
import { defineFunction } from '../define';

export const massCorrection = defineFunction({
  name: 'MASS.CORRECTION',
  family: 'mass loading',
  summary: 'A measured response with the sensor’s mass taken off again, line by line.',
  equation: 'A = A_meas/(1 − m·A_meas); transfer: A_dj = A_dj,meas/(1 − m·A_dd,meas)',
  args: {
    ...RESPONSE,
    addedMass: { unit: 'gram', symbol: 'm', text: 'Mass to take off: sensor, mount and cable together.', atLeast: 0 },
    ...RESPONSE_READING,
    drivingPoint: {
      kind: 'block',
      optional: true,
      text: 'For a transfer response: the measured driving-point response at the mass, same lines, quantity and form.',
    },
  },
  result: { kind: 'block', text: 'Frequency and the corrected response, in the columns of the given form.' },
  validity:
    'Rigid unit on one point, exact phase. Near antiresonances of the free structure small errors grow. A transfer response needs the driving point at the mass.',
  source: { kind: 'derivation', from: 'a = A·(F − m·a) at the point, solved for the free accelerance A' },

  compute: (given) => responseWithMass(given, -1),

  examples: [
    {
      args: [
        [
          [100, 40, 0],
          [200, 8, 0],
        ],
        10,
      ],
      result: [
        [100, 66.6667, 0],
        [200, 8.69565, 0],
      ],
      within: 1e-5,
      from: 'by hand: 40/(1 − 0.4) and 8/(1 − 0.08)',
    },
    {
      args: [[[100, 3, 180]], 10, 'accelerance', 'magnitude and phase', [[100, 50, 180]]],
      result: [[100, 2, 180]],
      within: 1e-9,
      from: 'by hand: a transfer line −3 with the driving point −50: −3/(1 + 0.5)',
    },
  ],
});
