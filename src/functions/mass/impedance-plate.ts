import { platePointImpedance } from '../../core/mass/local-mass';
import { PLATE } from './plate-arguments';
import { defineFunction } from '../define';

export const impedancePlate = defineFunction({
  name: 'IMPEDANCE.PLATE',
  family: 'mass loading',
  summary: 'Point impedance of a large thin plate, the same at every frequency.',
  equation: 'Z = 8·√(B′·ρh), B′ = E·h³/(12(1 − ν²))',
  args: PLATE,
  result: { unit: 'N·s/m', symbol: 'Z', text: 'Driving-point impedance, real.' },
  validity: 'As LOCAL.MASS.PLATE. For a sandwich panel use its measured impedance or bending stiffness instead.',
  source: {
    kind: 'book',
    cite: 'L. Cremer, M. Heckl, E. E. Ungar, Structure-Borne Sound, 2nd edition, Springer 1988',
    locator: 'point impedance of the infinite thin plate; section number not checked',
    read: 'from memory',
  },

  compute: platePointImpedance,

  examples: [
    {
      args: [1, 70, 2700, 0.33],
      result: 33.633,
      within: 1e-5,
      from: 'aluminium, by hand in the other form 2.30940·ρ·c_L·h², c_L = 5393.94 m/s',
    },
    { args: [2, 70, 2700, 0.33], result: 134.532, within: 1e-5, from: 'by hand: twice as thick, four times 33.6331' },
  ],
});
