import { failure, outcome } from '../../core/issue';
import { stiffnessNeeded as stiffnessFor } from '../../core/frequency/resonance';
import { defineFunction } from '../define';

export const stiffnessNeeded = defineFunction({
  name: 'STIFFNESS.NEEDED',
  family: 'frequency span',
  summary: 'Joint stiffness that a mounted resonance needs.',
  equation: 'k = m·(2π)²/(1/f² − 1/f_s²)',
  args: {
    wanted: { unit: 'Hz', symbol: 'f', text: 'Mounted resonance needed.', above: 0 },
    resonance: { unit: 'Hz', symbol: 'f_s', text: 'Resonance by the data sheet, stiff stud on steel.', above: 0 },
    mass: { unit: 'gram', symbol: 'm', text: 'Mass of the sensor.', above: 0 },
  },
  result: { unit: 'N/m', symbol: 'k', text: 'Axial stiffness of the joint.' },
  validity: 'As RESONANCE.MOUNTED, whose inverse it is.',
  source: {
    kind: 'book',
    cite: 'Dunkerley’s bound on the lowest natural frequency',
    locator: 'solved for the stiffness; no page',
    read: 'from memory',
  },

  compute: ({ wanted, resonance, mass }) =>
    wanted < resonance
      ? outcome(stiffnessFor(wanted, resonance, mass))
      : failure({ code: 'no-result', rule: 'the sensor’s own resonance is too low' }),

  examples: [
    { args: [45946.40065473677, 50000, 5.6], result: 3e9, within: 1e-6, from: 'by hand, back from 3 GN/m' },
    {
      args: [3000, 5000, 10],
      result: 5551652,
      within: 1e-6,
      from: 'by hand: 1/(1/9 − 1/25) = 14.0625 kHz², so f_m = 3.75 kHz',
    },
  ],
});
