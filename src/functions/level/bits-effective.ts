import { effectiveBits } from '../../core/level/converter';
import { defineFunction } from '../define';

export const bitsEffective = defineFunction({
  name: 'BITS.EFFECTIVE',
  family: 'level and dynamic range',
  summary: 'Bits of an ideal converter with the same dynamic range.',
  equation: 'N = (D − 1.76)/6.02',
  args: {
    dynamicRange: { unit: 'dB', symbol: 'D', text: 'Noise and distortion below an r.m.s. full-scale sine.', above: 0 },
  },
  result: { unit: '1', symbol: 'N', text: 'Effective number of bits.' },
  validity: 'Dynamic range stated re a full-scale sine over half the sample rate.',
  source: { kind: 'derivation', from: 'D = 20·log₁₀(2^N·√1.5) solved for N' },

  compute: ({ dynamicRange }) => effectiveBits(dynamicRange),

  examples: [
    { args: [110], result: 17.97812, within: 1e-6, from: 'by hand: (110 − 1.760913)/6.020600' },
    { args: [98.0905112030308], result: 16, within: 1e-6, from: 'by hand, back from 16 bits' },
  ],
});
