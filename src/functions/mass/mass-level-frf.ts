import { failure, mapped } from '../../core/issue';
import { exactLevelEffect } from '../../core/mass/modification';
import { responseWithin } from '../../core/mass/frequency-response';
import { bandWithin, hasPhase, readResponse, RESPONSE, RESPONSE_READING } from './response-table';
import { defineFunction } from '../define';

export const massLevelFrf = defineFunction({
  name: 'MASS.LEVEL.FRF',
  family: 'mass loading',
  summary:
    'Exact change of the level by an added mass, smallest and largest over a band, from a free driving-point response.',
  equation: 'a′/a = 1/|1 + m·A(f)|',
  args: {
    ...RESPONSE,
    addedMass: { unit: 'gram', symbol: 'm', text: 'Sensor, mount and cable together.', atLeast: 0 },
    low: { unit: 'Hz', text: 'Lower edge of the band, or both as a range text.', above: 0, rangeWith: 'high' },
    high: { unit: 'Hz', text: 'Upper edge of the band.', above: 0 },
    ...RESPONSE_READING,
  },
  result: {
    kind: 'row',
    columns: [
      { title: 'low', unit: '%', text: 'Largest drop, or smallest rise, in the band.' },
      { title: 'high', unit: '%', text: 'Largest rise in the band: just below a resonance the level goes up.' },
    ],
  },
  validity:
    'Exact for a linear structure driven by forces and a rigid unit on one point. Needs the phase: magnitudes alone do not tell a rise from a drop.',
  source: { kind: 'derivation', from: 'equilibrium at the point: a′ = A·(F − m·a′) with the free accelerance A' },

  compute: ({ response, addedMass, low, high, quantity, form }) => {
    if (!hasPhase(form)) {
      return failure({ code: 'wrong-size', arg: 'form', given: form, rule: 'a form with phase' });
    }
    const reading = readResponse(response, quantity, form, 'response');
    if (!reading.ok) return reading;
    return mapped(bandWithin(reading.value, low, high), (lines) => {
      const effects = responseWithin(lines, low, high).map((value) => exactLevelEffect(value, addedMass));
      return [Math.min(...effects), Math.max(...effects)];
    });
  },

  examples: [
    {
      args: [
        [
          [50, -20, 0],
          [100, 0, -75],
          [200, 25, 0],
        ],
        10,
        50,
        200,
      ],
      result: [[-20, 25]],
      within: 1e-9,
      from: 'by hand: 1/0.8, 1/|1 − 0.75j| = 0.8 and 1/1.25 = 0.8',
    },
    {
      args: [
        [
          [50, 7.5, 90],
          [100, 7.5, 180],
        ],
        100,
        50,
        50,
        'accelerance',
        'magnitude and phase',
      ],
      result: [[-20, -20]],
      within: 1e-9,
      from: 'by hand: 1/|1 + 0.75j| = 0.8 at 50 Hz alone',
    },
  ],
});
