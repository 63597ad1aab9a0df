import { delayPhase as phaseOfDelay } from '../../core/frequency/analyser';
import { defineFunction } from '../define';

export const delayPhase = defineFunction({
  name: 'DELAY.PHASE',
  family: 'frequency span',
  summary: 'Phase that a delay between two channels makes.',
  equation: 'φ = 360°·f·Δt',
  args: {
    frequency: { unit: 'Hz', symbol: 'f', text: 'Frequency.', above: 0 },
    delay: { unit: 'ms', symbol: 'Δt', text: 'Delay between the channels.', atLeast: 0 },
  },
  result: { unit: 'deg', symbol: 'φ', text: 'Phase difference.' },
  validity:
    'Constant delay. Mixed modules or internal filters spoil frequency response functions without a gain error.',
  source: { kind: 'derivation', from: 'phase of a pure delay' },

  compute: ({ frequency, delay }) => phaseOfDelay(frequency, delay),

  examples: [
    { args: [5000, 0.002777777777777778], result: 5, within: 1e-6, from: 'by hand: 360 × 5 kHz × 2.7778 µs' },
    { args: [1000, '1 µs'], result: 0.36, within: 1e-6, from: 'by hand: 360 × 0.001' },
  ],
});
