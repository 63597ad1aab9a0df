import { strainError as errorOf } from '../../core/trust/sources';
import { defineFunction } from '../define';

export const strainError = defineFunction({
  name: 'STRAIN.ERROR',
  family: 'trust',
  summary: 'False acceleration from strain of the surface under the sensor.',
  equation: 'a = s_b·ε',
  args: {
    strainSensitivity: { unit: 'mg/µε', symbol: 's_b', text: 'Base strain sensitivity of the sensor.', atLeast: 0 },
    strain: { unit: 'µε', symbol: 'ε', text: 'Strain of the surface at the point.', atLeast: 0 },
  },
  result: { unit: 'g', symbol: 'a', text: 'False acceleration; over the level it is a contribution.' },
  validity: 'Stiff bond. On thin bending parts it ruins low levels: shear types and small bases are better.',
  source: { kind: 'derivation', from: 'definition of the base strain sensitivity' },

  compute: ({ strainSensitivity, strain }) => errorOf(strainSensitivity, strain),

  examples: [
    {
      args: [2.0394324, 250],
      result: 0.5098581,
      within: 1e-6,
      from: 'by hand: 0.02 (m/s²)/µε × 250 = 5 m/s² over 9.80665',
    },
    { args: [0.2, 50], result: 0.01, within: 1e-9, from: 'by hand: 0.2 mg × 50' },
  ],
});
