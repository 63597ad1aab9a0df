import { BEAM_POINTS, beamPointImpedance } from '../../core/mass/local-mass';
import { BEAM, FREQUENCY } from './plate-arguments';
import { defineFunction } from '../define';

export const impedanceBeam = defineFunction({
  name: 'IMPEDANCE.BEAM',
  family: 'mass loading',
  summary: 'Modulus of the point impedance of a long beam in bending.',
  equation: '|Z| = 2√2·m′·c_B, c_B = (EI·ω²/m′)^¼; a quarter of it at a free end',
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
  result: { unit: 'N·s/m', symbol: '|Z|', text: 'Modulus of the driving-point impedance; its argument is 45°.' },
  validity: 'As LOCAL.MASS.BEAM.',
  source: {
    kind: 'book',
    cite: 'L. Cremer, M. Heckl, E. E. Ungar, Structure-Borne Sound, 2nd edition, Springer 1988',
    locator: 'point impedances of the infinite and the semi-infinite beam; section number not checked',
    read: 'from memory',
  },

  compute: ({ frequency, bendingStiffness, massPerLength, point }) =>
    beamPointImpedance({ bendingStiffness, massPerLength }, frequency, point),

  examples: [
    {
      args: [1000, 3.15, 0.162],
      result: 76.2691,
      within: 1e-5,
      from: 'by numpy in the other form |Y| = ω·√2/(4EI·k³), k = (m′ω²/EI)^¼',
    },
    {
      args: [250, 3.15, 0.162, 'end'],
      result: 9.53364,
      within: 1e-5,
      from: 'by hand: half (√f) of a quarter of 76.2691',
    },
  ],
});
