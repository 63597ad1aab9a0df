import { failure } from '../../core/issue';
import { modalLocalMass } from '../../core/mass/local-mass';
import { defineFunction } from '../define';

export const localMassModal = defineFunction({
  name: 'LOCAL.MASS.MODAL',
  family: 'mass loading',
  summary: 'Local effective mass from modal masses and mode shapes; of several modes the smallest.',
  equation: 'm_eff = min M_r/φ_r²',
  args: {
    modalMasses: { kind: 'list', unit: 'gram', text: 'Modal mass of each mode in the band.', above: 0 },
    shapes: {
      kind: 'list',
      unit: '1',
      text: 'Mode shape at the point, along the sensor’s axis, in the scaling of the modal mass.',
    },
  },
  result: { unit: 'gram', symbol: 'm_eff', text: 'Smallest modal local mass.' },
  validity:
    'Near a resonance, one mode dominating. Mass-normalised shapes: give 1 kg as modal mass. The added mass loads all three axes.',
  source: { kind: 'derivation', from: 'kinetic energy ½M_r·q̇² = ½(M_r/φ²)·v² with v = φ·q̇ at the point' },

  compute: ({ modalMasses, shapes }) => {
    if (modalMasses.length !== shapes.length) {
      const rule = `one shape for each of the ${modalMasses.length} modal masses`;
      return failure({ code: 'wrong-size', arg: 'shapes', given: `${shapes.length} shapes`, rule });
    }
    const least = Math.min(...modalMasses.map((mass, i) => modalLocalMass(mass, shapes[i] as number)));
    return Number.isFinite(least) ? least : failure({ code: 'no-result', rule: 'the point is a node of every mode' });
  },

  examples: [
    { args: [400, 0.5], result: 1600, within: 1e-12, from: 'by hand: 400 / 0.25' },
    {
      args: [
        [[400], [90], [250]],
        [[1], [0.3], [0]],
      ],
      result: 400,
      within: 1e-12,
      from: 'by hand: 400, 1000 and a node; the smallest counts',
    },
  ],
});
