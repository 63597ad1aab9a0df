import { quantisationNoise as noiseOfStep } from '../../core/level/converter';
import { defineFunction } from '../define';

export const quantisationNoise = defineFunction({
  name: 'QUANTISATION.NOISE',
  family: 'level and dynamic range',
  summary: 'R.m.s. quantisation noise of a converter.',
  equation: 'σ = q/√12, q = 2·R/2^N',
  args: {
    bits: { unit: '1', symbol: 'N', text: 'Bits of the converter.', above: 0, atMost: 64 },
    range: { unit: 'V', symbol: 'R', text: 'Peak voltage of the range.', above: 0 },
  },
  result: { unit: 'V', symbol: 'σ', text: 'R.m.s. noise from 0 to half the sample rate.' },
  validity: 'Signal busy enough that the error is spread evenly over a step.',
  source: { kind: 'derivation', from: 'variance q²/12 of an error uniform over a step' },

  compute: ({ bits, range }) => noiseOfStep(bits, range),

  examples: [
    { args: [16, 10], result: 8.809666e-5, within: 1e-7, from: 'by hand: 305.17578 µV/3.4641016' },
    { args: [12, 5], result: 0.0007047733, within: 1e-6, from: 'by hand: 2.4414063 mV/3.4641016' },
  ],
});
