import { frequencyOverResonance } from '../../core/frequency/resonance';
import { defineFunction } from '../define';

export const resonanceLimit = defineFunction({
  name: 'RESONANCE.LIMIT',
  family: 'frequency span',
  summary: 'Frequency up to which a resonance alone changes the sensitivity by no more than a tolerance.',
  equation: '1/√((1−x²)²+(x/Q)²) = 1 ± ε, f = x·f_r',
  args: {
    resonance: { unit: 'Hz', symbol: 'f_r', text: 'Mounted resonance.', above: 0 },
    tolerance: { unit: '%', symbol: 'ε', text: 'Change allowed.', above: 0, below: 100, default: 5 },
    qualityFactor: { unit: '1', symbol: 'Q', text: 'Quality factor; blank: undamped.', above: 0, optional: true },
  },
  result: { unit: 'Hz', symbol: 'f', text: 'Upper limit.' },
  validity: 'One resonance, relative to low frequency; rises when lightly damped, falls when damped.',
  source: { kind: 'derivation', from: '|H| = 1/√((1−x²)²+(x/Q)²) solved for x; undamped x = √(1 − 1/(1+ε))' },

  compute: ({ resonance, tolerance, qualityFactor = Infinity }) =>
    resonance * frequencyOverResonance(tolerance, qualityFactor),

  examples: [
    { args: [10000], result: 2182.179, within: 1e-6, from: 'by hand: √(1/21)' },
    { args: [10000, 12.5], result: 3333.333, within: 1e-6, from: 'by hand: 1/(1 − 1/9) = 1.125, the one-third rule' },
    {
      args: [1000, 10, 0.7142857142857143],
      result: 710.447,
      within: 1e-6,
      from: 'scipy.optimize.brentq on the damped response, ζ = 0.7',
    },
  ],
});
