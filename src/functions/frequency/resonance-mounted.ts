import { mountedResonance } from '../../core/frequency/resonance';
import { defineFunction } from '../define';

export const resonanceMounted = defineFunction({
  name: 'RESONANCE.MOUNTED',
  family: 'frequency span',
  summary: 'Resonance of a sensor on its mount; a soft joint lowers it.',
  equation: '1/f² = 1/f_s² + 1/f_m², f_m = √(k/m)/2π',
  args: {
    resonance: { unit: 'Hz', symbol: 'f_s', text: 'Resonance by the data sheet, stiff stud on steel.', above: 0 },
    mass: { unit: 'gram', symbol: 'm', text: 'Mass of the sensor.', above: 0 },
    stiffness: {
      unit: 'N/m',
      symbol: 'k',
      text: 'Axial stiffness of the joint; blank for a stiff stud: the resonance stays.',
      above: 0,
      optional: true,
    },
  },
  result: { unit: 'Hz', symbol: 'f', text: 'Mounted resonance.' },
  validity:
    'Lower bound: reads up to about 13 % low against two bodies solved exactly. Soft or thin structure lowers it more.',
  source: {
    kind: 'book',
    cite: 'Dunkerley’s bound on the lowest natural frequency',
    locator: 'from memory, no page',
    read: 'from memory',
  },

  compute: ({ resonance, mass, stiffness }) => mountedResonance(resonance, mass, stiffness),

  examples: [
    { args: [38000, 4.8], result: 38000, within: 1e-12, from: 'definition: no stiffness, no change' },
    {
      args: [50000, 5.6, 3e9],
      result: 45946.4,
      within: 1e-6,
      from: 'by hand: f_m = 116489.5 Hz; 1/√(4e-10 + 7.369305e-11)',
    },
    {
      args: [50000, 5.6, 2e8],
      result: 25773.58,
      within: 1e-6,
      from: 'by hand: f_m = 30077.46 Hz; 1/√(4e-10 + 1.1053957e-9)',
    },
  ],
});
