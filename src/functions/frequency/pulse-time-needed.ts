import { failure, outcome } from '../../core/issue';
import { pulseRatioNeeded } from '../../core/frequency/pulse';
import { defineFunction } from '../define';

export const pulseTimeNeeded = defineFunction({
  name: 'PULSE.TIME.NEEDED',
  family: 'frequency span',
  summary: 'Time constant that keeps the low-end error of a half-sine shock pulse.',
  equation: 'PULSE.ERROR solved for τ',
  args: {
    duration: { unit: 'ms', symbol: 'T', text: 'Duration of the half-sine pulse.', above: 0 },
    error: { unit: '%', symbol: 'e', text: 'Largest error, as a positive number.', above: 0, below: 100, default: 5 },
    kind: {
      kind: 'choice',
      choices: ['peak', 'undershoot', 'velocity'],
      text: 'Error of the peak, undershoot after the pulse, or error of the velocity change.',
      default: 'peak',
    },
  },
  result: { unit: 's', symbol: 'τ', text: 'Discharge time constant of the slowest pole.' },
  validity: 'As PULSE.ERROR, whose inverse it is.',
  source: { kind: 'derivation', from: 'half-sine through τ·y′ + y = τ·x′ solved exactly, a = πτ/T' },

  compute: ({ duration, error, kind }) => {
    const ratio = pulseRatioNeeded(kind, error);
    if (ratio !== undefined) return outcome(duration * ratio);
    return failure({ code: 'no-result', rule: 'no time constant makes an error of this size' });
  },

  examples: [
    { args: [11, 3.0784334756437937], result: 0.11, within: 1e-6, from: 'scipy, back from τ = 10·T' },
    { args: [10, 0.994078893507877, 'velocity'], result: 0.5, within: 1e-6, from: 'scipy, back from τ = 50·T' },
    { args: [10, 39.5352015106459, 'undershoot'], result: 0.01, within: 1e-6, from: 'by hand, back from τ = T' },
  ],
});
