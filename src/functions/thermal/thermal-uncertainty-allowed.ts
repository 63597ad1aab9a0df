import { defineFunction } from '../define';

export const thermalUncertaintyAllowed = defineFunction({
  name: 'THERMAL.UNCERTAINTY.ALLOWED',
  family: 'thermal',
  summary: 'How well the sensor’s temperature must be known for a correction to keep a tolerance.',
  equation: 'u(T) = tol/|dδ/dT|',
  args: {
    slope: { unit: '%/K', text: 'Size of the steepest slope of the deviation.', above: 0 },
    tolerance: { unit: '%', symbol: 'tol', text: 'Deviation that may remain.', atLeast: 0 },
  },
  result: { unit: 'K', symbol: 'u(T)', text: 'Uncertainty of the temperature.' },
  validity: 'As THERMAL.RESIDUAL, whose inverse it is.',
  source: { kind: 'derivation', from: '|dδ/dT|·u(T) = tol solved for u(T)' },

  compute: ({ slope, tolerance }) => tolerance / slope,

  examples: [
    { args: [0.15, 0.45], result: 3, within: 1e-9, from: 'by hand: 0.45/0.15' },
    { args: [0.08, 1], result: 12.5, within: 1e-9, from: 'by hand: 1/0.08' },
  ],
});
