import { delayAllowed as delayForPhase } from '../../core/frequency/analyser';
import { defineFunction } from '../define';

export const delayAllowed = defineFunction({
  name: 'DELAY.ALLOWED',
  family: 'frequency span',
  summary: 'Delay between two channels that keeps a phase.',
  equation: 'Δt = φ/(360°·f)',
  args: {
    frequency: { unit: 'Hz', symbol: 'f', text: 'Upper edge of the needed band.', above: 0 },
    phase: { unit: 'deg', symbol: 'φ', text: 'Largest phase difference.', above: 0, default: 2 },
  },
  result: { unit: 'ms', symbol: 'Δt', text: 'Delay.' },
  validity: 'As DELAY.PHASE, whose inverse it is. The default of 2° is common practice, no source.',
  source: { kind: 'derivation', from: 'phase of a pure delay solved for the delay' },

  compute: ({ frequency, phase }) => delayForPhase(frequency, phase),

  examples: [
    { args: [5000, 5], result: 0.002777778, within: 1e-6, from: 'by hand: 5/(360 × 5 kHz)' },
    { args: [1000], result: 0.005555556, within: 1e-6, from: 'by hand: 2/(360 × 1 kHz)' },
  ],
});
