import { thermalVerdict } from '../../core/verdict';
import { defineFunction } from '../define';
import { TEMPERATURE_ARGUMENTS } from './temperature-arguments';

export const verdictThermal = defineFunction({
  name: 'VERDICT.THERMAL',
  family: 'verdict',
  summary: 'Verdict on a thermal deviation band and on the temperature limits of sensor, mount and cable.',
  equation: 'FAIL beyond a limit; PASS if max |δ| ≤ tol, WARN if the half band ≤ tol, else FAIL',
  args: {
    low: { unit: '%', symbol: 'δ₁', text: 'Smallest deviation in the range.', forgiving: true },
    high: { unit: '%', symbol: 'δ₂', text: 'Largest deviation in the range.', forgiving: true },
    tolerance: { unit: '%', symbol: 'tol', text: 'Largest deviation allowed either way.', atLeast: 0 },
    ...TEMPERATURE_ARGUMENTS,
  },
  result: { kind: 'text', text: 'PASS, WARN, FAIL or INCOMPLETE.' },
  validity:
    'WARN means: only a correction by the logged sensor temperature saves it. A band, a needed temperature or a sensor limit that is not known is INCOMPLETE.',
  source: {
    kind: 'derivation',
    from: 'an uncorrected reading is wrong by δ; scaled to the middle of the band it is wrong by the half band',
  },

  compute: (given) =>
    thermalVerdict({
      band: given.low === undefined || given.high === undefined ? undefined : { low: given.low, high: given.high },
      tolerance: given.tolerance,
      needed: { min: given.temperatureLow, max: given.temperatureHigh },
      sensor: { min: given.sensorMin, max: given.sensorMax },
      others: [
        { min: given.mountMin, max: given.mountMax },
        { min: given.cableMin, max: given.cableMax },
      ],
    }),

  examples: [
    { args: [-1.1, 1.6, 5, 15, 35, -54, 121], result: 'PASS', from: 'by definition: 1.6 % is within 5 %' },
    {
      args: [0, 8, 5, 15, 85, -54, 121],
      result: 'WARN',
      from: 'by hand: 8 % exceeds 5 %, the half band 8/2.08 = 3.8 % does not',
    },
    { args: [-1, 13, 5, 15, 120, -54, 121], result: 'FAIL', from: 'by hand: half band 14/2.12 = 6.6 %' },
    {
      args: [-1, 2, 5, 15, 70, -54, 121, null, 40],
      result: 'FAIL',
      from: 'by definition: the mount lets go at 40 °C, 70 °C is needed',
    },
    { args: [null, null, 5, 15, 35, -54, 121], result: 'INCOMPLETE', from: 'by definition: no band' },
  ],
});
