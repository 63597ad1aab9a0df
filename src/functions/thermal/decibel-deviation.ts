import { deviationOfDecibel } from '../../core/thermal/coefficient';
import { defineFunction } from '../define';

export const decibelDeviation = defineFunction({
  name: 'DECIBEL.DEVIATION',
  family: 'thermal',
  summary: 'A level difference in decibel as a deviation.',
  equation: 'δ = 10^(L/20) − 1',
  args: { level: { unit: 'dB', symbol: 'L', text: 'Level difference of an amplitude.', atLeast: -400, atMost: 400 } },
  result: { unit: '%', symbol: 'δ', text: 'The same as a deviation.' },
  validity: 'Amplitudes. Not symmetric: −1 dB is −10.9 %, +1 dB is +12.2 %.',
  source: { kind: 'derivation', from: 'definition of the decibel of an amplitude ratio' },

  compute: ({ level }) => deviationOfDecibel(level),

  examples: [
    { args: [20], result: 900, within: 1e-9, from: 'by hand: ten times' },
    { args: [1], result: 12.20185, within: 1e-6, from: 'by hand: 10^0.05 = 1.1220185' },
  ],
});
