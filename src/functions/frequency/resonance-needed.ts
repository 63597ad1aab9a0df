import { frequencyOverResonance } from '../../core/frequency/resonance';
import { defineFunction } from '../define';

export const resonanceNeeded = defineFunction({
  name: 'RESONANCE.NEEDED',
  family: 'frequency span',
  summary: 'Mounted resonance that keeps the sensitivity within a tolerance up to the upper band edge.',
  equation: 'f_r = f/x, 1/√((1−x²)²+(x/Q)²) = 1 ± ε',
  args: {
    high: { unit: 'Hz', symbol: 'f', text: 'Upper edge of the needed band.', above: 0 },
    tolerance: { unit: '%', symbol: 'ε', text: 'Change allowed.', above: 0, below: 100, default: 5 },
    qualityFactor: { unit: '1', symbol: 'Q', text: 'Quality factor; blank: undamped.', above: 0, optional: true },
  },
  result: { unit: 'Hz', symbol: 'f_r', text: 'Mounted resonance needed, mount included.' },
  validity:
    'As RESONANCE.LIMIT, whose inverse it is. Five times the band edge keeps 4.2 % (rule attributed to ISO 5348).',
  source: { kind: 'derivation', from: '|H| = 1/√((1−x²)²+(x/Q)²) solved for x; undamped x = √(1 − 1/(1+ε))' },

  compute: ({ high, tolerance, qualityFactor = Infinity }) => high / frequencyOverResonance(tolerance, qualityFactor),

  examples: [
    { args: [2000], result: 9165.151, within: 1e-6, from: 'by hand: 2000 × √21' },
    { args: [2000, 10], result: 6633.25, within: 1e-6, from: 'by hand: 2000 × √11' },
    { args: [1000, 12.5], result: 3000, within: 1e-6, from: 'by hand: the one-third rule' },
  ],
});
