import { layerStiffness } from '../../core/frequency/resonance';
import { defineFunction } from '../define';

export const stiffnessLayer = defineFunction({
  name: 'STIFFNESS.LAYER',
  family: 'frequency span',
  summary: 'Axial stiffness of a thin adhesive layer.',
  equation: 'k = E·A/t',
  args: {
    modulus: { unit: 'GPa', symbol: 'E', text: 'Elastic modulus of the layer.', above: 0 },
    area: { unit: 'mm²', symbol: 'A', text: 'Area of the joint.', above: 0 },
    thickness: { unit: 'mm', symbol: 't', text: 'Thickness of the layer.', above: 0 },
  },
  result: { unit: 'N/m', symbol: 'k', text: 'Axial stiffness.' },
  validity: 'Thin, evenly loaded layer between stiff faces; a soft layer in a confined gap is stiffer.',
  source: { kind: 'derivation', from: 'Hooke: stress E·δ/t on area A' },

  compute: ({ modulus, area, thickness }) => layerStiffness(modulus, area, thickness),

  examples: [
    { args: [3, 50, 0.05], result: 3e9, within: 1e-6, from: 'by hand: 3e9 Pa × 50e-6 m²/50e-6 m' },
    { args: [0.005, 50, 0.1], result: 2500000, within: 1e-6, from: 'by hand: film tape, 5e6 × 50e-6/1e-4' },
  ],
});
