import { deviationInDecibel } from '../../core/thermal/coefficient';
import { defineFunction } from '../define';

export const deviationDecibel = defineFunction({
  name: 'DEVIATION.DECIBEL',
  family: 'thermal',
  summary: 'A deviation in decibel.',
  equation: 'L = 20·log₁₀(1 + δ)',
  args: { deviation: { unit: '%', symbol: 'δ', text: 'Deviation of an amplitude.', above: -100 } },
  result: { unit: 'dB', symbol: 'L', text: 'The same as a level difference.' },
  validity: 'Amplitudes; the same dB value holds for the spectral density.',
  source: { kind: 'derivation', from: 'definition of the decibel of an amplitude ratio' },

  compute: ({ deviation }) => deviationInDecibel(deviation),

  examples: [
    { args: [100], result: 6.0206, within: 1e-6, from: 'by hand: 20·log₁₀ 2' },
    { args: [-10], result: -0.91515, within: 1e-6, from: 'by hand: 20·log₁₀ 0.9 = 20 × (0.9542425 − 1)' },
  ],
});
