import { pulseOvershoot as overshoot } from '../../core/frequency/pulse-resonance';
import { defineFunction } from '../define';

export const pulseOvershoot = defineFunction({
  name: 'PULSE.OVERSHOOT',
  family: 'frequency span',
  summary: 'Error that the resonance makes in the peak of a half-sine shock pulse.',
  equation: 'y″ + 2ζω·y′ + ω²·y = ω²·sin(πt/T), largest y less 1',
  args: {
    resonance: { unit: 'Hz', symbol: 'f_r', text: 'Mounted resonance.', above: 0 },
    qualityFactor: { unit: '1', symbol: 'Q', text: 'Quality factor of the resonance, 1/(2ζ).', above: 0.5 },
    duration: { unit: 'ms', symbol: 'T', text: 'Duration of the half-sine pulse.', above: 0 },
  },
  result: { unit: '%', symbol: 'e', text: 'Of the pulse’s height; positive reads high.' },
  validity:
    'One resonance, half-sine. Real impacts have steeper edges and ring more; ringing can also overload the amplifier.',
  source: { kind: 'derivation', from: 'one degree of freedom under a half-sine, solved exactly' },

  compute: ({ resonance, qualityFactor, duration }) => overshoot(resonance * duration, qualityFactor),

  examples: [
    {
      args: [5000, 50, 1],
      result: 8.408,
      within: 1e-3,
      from: 'scipy.integrate.solve_ivp with tight tolerance, f_r·T = 5, ζ = 0.01',
    },
    {
      args: [10000, 50, 1],
      result: 3.677,
      within: 1e-3,
      from: 'scipy.integrate.solve_ivp with tight tolerance, f_r·T = 10, ζ = 0.01',
    },
  ],
});
