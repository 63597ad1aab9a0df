import { analyserLimit as topFrequency } from '../../core/frequency/analyser';
import { defineFunction } from '../define';

export const analyserLimit = defineFunction({
  name: 'ANALYSER.LIMIT',
  family: 'frequency span',
  summary: 'Highest frequency an analyser measures without aliasing.',
  equation: 'f = f_s/2.56',
  args: {
    sampleRate: { unit: 'Hz', symbol: 'f_s', text: 'Sample rate.', above: 0 },
  },
  result: { unit: 'Hz', symbol: 'f', text: 'Upper limit.' },
  validity:
    'A ringing sensor overloads ahead of a digital filter: its resonance must be below half the sample rate or filtered before.',
  source: { kind: 'practice', note: 'common practice, no source' },

  compute: ({ sampleRate }) => topFrequency(sampleRate),

  examples: [
    { args: [51200], result: 20000, within: 1e-6, from: 'by hand: 51200/2.56' },
    { args: [512], result: 200, within: 1e-6, from: 'by hand: 512/2.56' },
  ],
});
