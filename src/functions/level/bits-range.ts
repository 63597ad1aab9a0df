import { idealRange } from '../../core/level/converter';
import { defineFunction } from '../define';

export const bitsRange = defineFunction({
  name: 'BITS.RANGE',
  family: 'level and dynamic range',
  summary: 'Dynamic range of an ideal converter.',
  equation: 'D = 6.02·N + 1.76',
  args: {
    bits: { unit: '1', symbol: 'N', text: 'Bits of the converter.', above: 0, atMost: 64 },
  },
  result: { unit: 'dB', symbol: 'D', text: 'Below an r.m.s. full-scale sine.' },
  validity: 'Quantisation noise only: beyond about 20 bits the electronics limit, not the bits.',
  source: { kind: 'derivation', from: 'full-scale sine R/√2 over quantisation noise R/(2^(N−1)·√12)' },

  compute: ({ bits }) => idealRange(bits),

  examples: [
    { args: [16], result: 98.09051, within: 1e-6, from: 'by hand: 96.329598 + 1.760913' },
    { args: [24], result: 146.2553, within: 1e-6, from: 'by hand: 144.494398 + 1.760913' },
  ],
});
