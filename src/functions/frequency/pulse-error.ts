import { pulseError as errorOfPulse } from '../../core/frequency/pulse';
import { defineFunction } from '../define';

export const pulseError = defineFunction({
  name: 'PULSE.ERROR',
  family: 'frequency span',
  summary: 'Error that the low end makes in a half-sine shock pulse.',
  equation: 'y = a/(1+a²)·(cos ωt + a·sin ωt − e^(−t/τ)), a = πτ/T, ω = π/T',
  args: {
    timeConstant: { unit: 's', symbol: 'τ', text: 'Discharge time constant of the slowest pole.', above: 0 },
    duration: { unit: 'ms', symbol: 'T', text: 'Duration of the half-sine pulse.', above: 0 },
    kind: {
      kind: 'choice',
      choices: ['peak', 'undershoot', 'velocity'],
      text: 'Error of the peak, undershoot after the pulse, or error of the velocity change.',
      default: 'peak',
    },
  },
  result: { unit: '%', symbol: 'e', text: 'Of the pulse’s height or velocity change; negative reads low.' },
  validity:
    'One pole, half-sine. Velocity change and shock response below 1/T need a long time constant or static response.',
  source: { kind: 'derivation', from: 'half-sine through τ·y′ + y = τ·x′ solved exactly, a = πτ/T' },

  compute: ({ timeConstant, duration, kind }) => errorOfPulse(kind, timeConstant / duration),

  examples: [
    {
      args: [0.11, 11],
      result: -3.078433,
      within: 1e-6,
      from: 'scipy: exact solution, bounded maximum search, τ = 10·T',
    },
    {
      args: [0.011, 11, 'undershoot'],
      result: -39.5352,
      within: 1e-6,
      from: 'by hand, end of the pulse: −π/(1 + π²)·(1 + 1/e)',
    },
    {
      args: [0.55, 11, 'velocity'],
      result: -0.9940789,
      within: 1e-6,
      from: 'scipy.integrate.quad of the exact solution, τ = 50·T',
    },
  ],
});
