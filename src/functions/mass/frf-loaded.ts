import { RESPONSE, RESPONSE_READING } from './response-table';
import { responseWithMass } from './response-with-mass';
import { defineFunction } from '../define';

export const frfLoaded = defineFunction({
  name: 'FRF.LOADED',
  family: 'mass loading',
  summary: 'A free response as it will be measured with the sensor’s mass on, line by line.',
  equation: 'A′ = A/(1 + m·A); transfer: A′_dj = A_dj/(1 + m·A_dd)',
  args: {
    ...RESPONSE,
    addedMass: { unit: 'gram', symbol: 'm', text: 'Mass to put on: sensor, mount and cable together.', atLeast: 0 },
    ...RESPONSE_READING,
    drivingPoint: {
      kind: 'block',
      optional: true,
      text: 'For a transfer response: the free driving-point response at the mass, same lines, quantity and form.',
    },
  },
  result: { kind: 'block', text: 'Frequency and the loaded response, in the columns of the given form.' },
  validity: 'Exact for a linear structure driven by forces and a rigid unit on one point; inverse of MASS.CORRECTION.',
  source: { kind: 'derivation', from: 'a′ = A·(F − m·a′) at the point, solved for a′/F' },

  compute: (given) => responseWithMass(given, 1),

  examples: [
    {
      args: [
        [
          [100, 100, 0],
          [200, -50, 0],
        ],
        10,
      ],
      result: [
        [100, 50, 0],
        [200, -100, 0],
      ],
      within: 1e-9,
      from: 'by hand: 100/2 and −50/0.5, the second below a resonance',
    },
    {
      args: [[[100, 0, 40]], 10, null, null, [[100, 100, 0]]],
      result: [[100, 0, 20]],
      within: 1e-9,
      from: 'by hand: a transfer line 40j with the driving point 100: 40j/2',
    },
  ],
});
