import { quantisationStep as stepOf } from '../../core/level/converter';
import { defineFunction } from '../define';

export const quantisationStep = defineFunction({
  name: 'QUANTISATION.STEP',
  family: 'level and dynamic range',
  summary: 'Voltage step of a converter.',
  equation: 'q = 2·R/2^N',
  args: {
    bits: { unit: '1', symbol: 'N', text: 'Bits of the converter.', above: 0, atMost: 64 },
    range: { unit: 'V', symbol: 'R', text: 'Peak voltage of the range.', above: 0 },
  },
  result: { unit: 'V', symbol: 'q', text: 'Step.' },
  validity: 'Range is ± the given voltage.',
  source: { kind: 'derivation', from: '2^N equal steps over the whole range' },

  compute: ({ bits, range }) => stepOf(bits, range),

  examples: [
    { args: [16, 10], result: 0.00030517578, within: 1e-7, from: 'by hand: 20/65536' },
    { args: [24, 10], result: 1.1920929e-6, within: 1e-7, from: 'by hand: 20/16777216' },
  ],
});
