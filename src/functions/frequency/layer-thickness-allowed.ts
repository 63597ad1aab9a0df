import { layerStiffness } from '../../core/frequency/resonance';
import { defineFunction } from '../define';

export const layerThicknessAllowed = defineFunction({
  name: 'LAYER.THICKNESS.ALLOWED',
  family: 'frequency span',
  summary: 'Thickest adhesive layer that keeps a joint stiffness.',
  equation: 't = E·A/k',
  args: {
    modulus: { unit: 'GPa', symbol: 'E', text: 'Elastic modulus of the layer.', above: 0 },
    area: { unit: 'mm²', symbol: 'A', text: 'Area of the joint.', above: 0 },
    stiffness: { unit: 'N/m', symbol: 'k', text: 'Axial stiffness of the joint.', above: 0 },
  },
  result: { unit: 'mm', symbol: 't', text: 'Thickness of the layer.' },
  validity: 'As STIFFNESS.LAYER, whose inverse it is.',
  source: { kind: 'derivation', from: 'k = E·A/t solved for t' },

  compute: ({ modulus, area, stiffness }) => layerStiffness(modulus, area, stiffness),

  examples: [
    { args: [3, 50, 3000000000.0], result: 0.05, within: 1e-6, from: 'by hand: 150000/3e9 m' },
    { args: [0.005, 50, 2500000.0], result: 0.1, within: 1e-6, from: 'by hand: 250/2.5e6 m' },
  ],
});
