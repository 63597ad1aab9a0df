import { BEAM_POINTS, beamPointImpedance, localMassOfImpedance } from '../../core/mass/local-mass';
import { BEAM, FREQUENCY } from './plate-arguments';
import { defineFunction } from '../define';

export const localMassBeam = defineFunction({
  name: 'LOCAL.MASS.BEAM',
  family: 'mass loading',
  summary: 'Local effective mass of a long beam in bending at a frequency.',
  equation: 'm_eff = |Z|/(2πf), Z = 2m′·c_B·(1 + j), c_B = (EI·ω²/m′)^¼; a quarter of it at a free end',
  args: {
    frequency: FREQUENCY,
    ...BEAM,
    point: {
      kind: 'choice',
      choices: BEAM_POINTS,
      default: 'interior',
      text: 'Far from both ends, or at the free end.',
    },
  },
  result: { unit: 'gram', symbol: 'm_eff', text: 'Modulus of the local effective mass.' },
  validity:
    'Slender beam, several bending wavelengths long: an average over modes. Check the modal local mass too, the smaller one counts.',
  source: {
    kind: 'book',
    cite: 'L. Cremer, M. Heckl, E. E. Ungar, Structure-Borne Sound, 2nd edition, Springer 1988',
    locator: 'point impedances of the infinite and the semi-infinite beam; section number not checked',
    read: 'from memory',
  },

  compute: ({ frequency, bendingStiffness, massPerLength, point }) =>
    localMassOfImpedance(beamPointImpedance({ bendingStiffness, massPerLength }, frequency, point), frequency),

  examples: [
    {
      args: [1000, 3.15, 0.162],
      result: 12.1386,
      within: 1e-5,
      from: 'aluminium 20 × 3 mm, by numpy in the other form |Y| = ω·√2/(4EI·k³): |Z| = 76.2691 N·s/m',
    },
    { args: [1000, 3.15, 0.162, 'end'], result: 3.03465, within: 1e-5, from: 'by hand: a quarter of 12.1386' },
  ],
});
