import { frequencyShift } from '../../core/mass/loading';
import { defineFunction } from '../define';

export const massShift = defineFunction({
  name: 'MASS.SHIFT',
  family: 'mass loading',
  summary: 'Change of a natural frequency that an added mass causes.',
  equation: 'Δf/f = 1/√(1 + r) − 1',
  args: {
    ratio: { unit: '1', symbol: 'r', text: 'Mass-loading ratio with the modal local mass.', atLeast: 0 },
  },
  result: { unit: '%', symbol: 'Δf/f', text: 'Change of the natural frequency; negative is a drop.' },
  validity:
    'One dominant mode or a mass-like part. The real drop is slightly larger, because the mode shape yields too.',
  source: { kind: 'derivation', from: 'ω² = k/M of one mode, with M replaced by M·(1 + r)' },

  compute: ({ ratio }) => frequencyShift(ratio),

  examples: [
    { args: [0], result: 0, within: 0, from: 'nothing added, nothing changed' },
    { args: [0.5625], result: -20, within: 1e-12, from: 'by hand: √1.5625 = 1.25, 1/1.25 = 0.8' },
    {
      args: [0.4],
      result: -15.591,
      within: 0.03,
      from: 'tip mass of a tenth of a cantilever (M_r = M/4), exact root βL = 1.72274 instead of 1.87510 by scipy: 0.84409',
    },
  ],
});
