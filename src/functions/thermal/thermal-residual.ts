import { correctionResidual } from '../../core/thermal/coefficient';
import { defineFunction } from '../define';

export const thermalResidual = defineFunction({
  name: 'THERMAL.RESIDUAL',
  family: 'thermal',
  summary: 'What stays after a correction by the logged sensor temperature.',
  equation: '|dδ/dT|·u(T)',
  args: {
    slope: { unit: '%/K', text: 'Steepest slope of the deviation, either sign.' },
    temperatureUncertainty: {
      unit: 'K',
      symbol: 'u(T)',
      text: 'Uncertainty of the sensor’s temperature, lag included.',
      atLeast: 0,
    },
  },
  result: { unit: '%', text: 'Remaining deviation either way.' },
  validity: 'First order; the curve’s own uncertainty comes on top. The temperature of the sensor, not of the chamber.',
  source: { kind: 'derivation', from: 'first-order Taylor term of δ(T)' },

  compute: ({ slope, temperatureUncertainty }) => correctionResidual(slope, temperatureUncertainty),

  examples: [
    { args: [0.15, 3], result: 0.45, within: 1e-9, from: 'by hand: 0.15 × 3' },
    { args: [-0.08, 5], result: 0.4, within: 1e-9, from: 'by hand: 0.08 × 5, either way' },
  ],
});
