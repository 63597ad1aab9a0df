import { peakDrop as dropOfShift } from '../../core/mass/several-sensors';
import { defineFunction } from '../define';

export const peakDrop = defineFunction({
  name: 'PEAK.DROP',
  family: 'mass loading',
  summary: 'Change of the level at the old peak when a lightly damped mode moves.',
  equation: 'ΔL = 1/√(1 + (s/ζ)²) − 1',
  args: {
    shift: { unit: '%', symbol: 's', text: 'Relative shift of the mode, either sign.', atLeast: -100, atMost: 100 },
    damping: { unit: '%', symbol: 'ζ', text: 'Damping ratio of the mode.', above: 0, atMost: 20 },
  },
  result: { unit: '%', symbol: 'ΔL', text: 'Change of the level at the old peak; negative.' },
  validity: 'One lightly damped mode, shift small against 1. A small shift ruins a sharp peak: r ≤ ζ/2 keeps it.',
  source: { kind: 'derivation', from: '|H| near a resonance goes with 1/√(ζ² + (Δf/f)²)' },

  compute: ({ shift, damping }) => dropOfShift(shift, damping),

  examples: [
    { args: [-0.75, 1], result: -20, within: 1e-12, from: 'by hand: √(1 + 0.5625) = 1.25' },
    { args: [0.5, 0.5], result: -29.2893, within: 1e-6, from: 'by hand: 1/√2 − 1' },
  ],
});
