import { rampForError } from '../../core/thermal/transient';
import { defineFunction } from '../define';

export const rampAllowed = defineFunction({
  name: 'RAMP.ALLOWED',
  family: 'thermal',
  summary: 'Fastest temperature ramp that keeps its false output.',
  equation: 'R = 2π·f_c·a/s_T',
  args: {
    sensitivity: { unit: 'mg/K', symbol: 's_T', text: 'Transient temperature sensitivity of the sensor.', above: 0 },
    corner: { unit: 'Hz', symbol: 'f_c', text: 'Low corner (−3 dB) of the chain.', above: 0 },
    allowedError: { unit: 'g', symbol: 'a', text: 'False acceleration accepted.', atLeast: 0 },
  },
  result: { unit: 'K/min', symbol: 'R', text: 'Rate of the temperature.' },
  validity: 'As THERMAL.RAMP. The limits of the article and of the chamber come on top.',
  source: {
    kind: 'derivation',
    from: 'slope s_T·R through one high-pass pole of time constant τ = 1/(2πf_c) settles at s_T·R·τ',
  },

  compute: ({ sensitivity, corner, allowedError }) => rampForError(sensitivity, corner, allowedError),

  examples: [
    { args: [60, 0.159154943, 0.001], result: 1, within: 1e-8, from: 'by hand: 1 mg/s over 60 mg/K is 1/60 K/s' },
    {
      args: [50.98581065, 6.76220316, 0.0001],
      result: 5,
      within: 1e-8,
      from: 'by hand, backwards: 5 K/min needs 6.7622 Hz',
    },
  ],
});
