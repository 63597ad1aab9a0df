import { pulseProductNeeded } from '../../core/frequency/pulse-resonance';
import { defineFunction } from '../define';

export const pulseResonanceNeeded = defineFunction({
  name: 'PULSE.RESONANCE.NEEDED',
  family: 'frequency span',
  summary: 'Mounted resonance from which on the peak of a half-sine shock pulse stays within an error.',
  equation: 'largest f_r·T at which |PULSE.OVERSHOOT| reaches the error, over T',
  args: {
    duration: { unit: 'ms', symbol: 'T', text: 'Duration of the half-sine pulse.', above: 0 },
    qualityFactor: { unit: '1', symbol: 'Q', text: 'Quality factor of the resonance, 1/(2ζ).', above: 0.5 },
    error: {
      unit: '%',
      symbol: 'e',
      text: 'Largest error of the peak, as a positive number.',
      atLeast: 0.1,
      below: 100,
      default: 5,
    },
  },
  result: { unit: 'Hz', symbol: 'f_r', text: 'Mounted resonance.' },
  validity: 'As PULSE.OVERSHOOT; every higher resonance holds the error too.',
  source: { kind: 'derivation', from: 'PULSE.OVERSHOOT solved for the resonance, from above' },

  compute: ({ duration, qualityFactor, error }) => pulseProductNeeded(error, qualityFactor) / duration,

  examples: [
    {
      args: [1, 50, 5],
      result: 7955.819,
      within: 1e-6,
      from: 'scipy: solve_ivp with tight tolerance inside brentq, last crossing of 5 %',
    },
    {
      args: [10, 0.7142857142857143, 5],
      result: 100.5758,
      within: 1e-6,
      from: 'scipy: solve_ivp with tight tolerance inside brentq, ζ = 0.7',
    },
  ],
});
