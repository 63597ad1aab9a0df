import { shiftForPeakDrop } from '../../core/mass/several-sensors';
import { defineFunction } from '../define';

export const peakShiftAllowed = defineFunction({
  name: 'PEAK.SHIFT.ALLOWED',
  family: 'mass loading',
  summary: 'Largest shift of a lightly damped mode that keeps the level at its old peak.',
  equation: 's = ζ·√(1/(1 − δ)² − 1)',
  args: {
    drop: { unit: '%', symbol: 'δ', text: 'Largest drop accepted, as a positive number.', above: 0, below: 100 },
    damping: { unit: '%', symbol: 'ζ', text: 'Damping ratio of the mode.', above: 0, atMost: 20 },
  },
  result: { unit: '%', symbol: 's', text: 'Largest relative shift, either way.' },
  validity: 'As PEAK.DROP, whose inverse it is; MASS.RATIO.ALLOWED turns the shift into a mass ratio.',
  source: { kind: 'derivation', from: '1/√(1 + (s/ζ)²) = 1 − δ solved for s' },

  compute: ({ drop, damping }) => shiftForPeakDrop(drop, damping),

  examples: [
    { args: [20, 1], result: 0.75, within: 1e-12, from: 'by hand: √(1/0.64 − 1)' },
    { args: [20, 0.5], result: 0.375, within: 1e-12, from: 'by hand: in proportion to the damping' },
  ],
});
