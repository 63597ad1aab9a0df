import { localMassOfImpedance, platePointImpedance } from '../../core/mass/local-mass';
import { defineFunction } from '../define';

export const localMassPlate = defineFunction({
  name: 'LOCAL.MASS.PLATE',
  family: 'mass loading',
  summary: 'Local effective mass of a large thin plate or skin at a frequency.',
  equation: 'm_eff = Z/(2πf), Z = 8·√(B′·ρh), B′ = E·h³/(12(1 − ν²))',
  args: {
    frequency: { unit: 'Hz', symbol: 'f', text: 'Highest frequency of interest.', above: 0 },
    thickness: { unit: 'mm', symbol: 'h', text: 'Thickness of the plate.', above: 0 },
    modulus: { unit: 'GPa', symbol: 'E', text: 'Young’s modulus.', above: 0 },
    density: { unit: 'kg/m³', symbol: 'ρ', text: 'Density.', above: 0 },
    poisson: { unit: '1', symbol: 'ν', text: 'Poisson’s ratio.', atLeast: 0, below: 0.5 },
  },
  result: { unit: 'gram', symbol: 'm_eff', text: 'Modulus of the local effective mass; falls with frequency.' },
  validity:
    'Thickness below a sixth of the bending wavelength; point a quarter wavelength off edges and stiffeners (common practice). An average over several modes: check the modal local mass too, the smaller one counts. Not for sandwich above its core-shear frequency.',
  source: {
    kind: 'book',
    cite: 'L. Cremer, M. Heckl, E. E. Ungar, Structure-Borne Sound, 2nd edition, Springer 1988',
    locator: 'point impedance of the infinite thin plate; section number not checked',
    read: 'from memory',
  },

  compute: ({ frequency, thickness, modulus, density, poisson }) =>
    localMassOfImpedance(platePointImpedance({ thickness, modulus, density, poisson }), frequency),

  examples: [
    {
      args: [1000, 1, 70, 2700, 0.33],
      result: 5.3529,
      within: 1e-5,
      from: 'aluminium, by hand in the other form 2.3094·ρ·c_L·h²: c_L = 5393.9 m/s, Z = 33.633 N·s/m, over 6283.19 rad/s',
    },
    {
      args: [1000, '0.001 m', '210 GPa', 7850, 0.3],
      result: 15.644,
      within: 1e-4,
      from: 'steel, by hand: B′ = 19.2308 N·m, m″ = 7.85 kg/m², Z = 8·√150.962 = 98.293 N·s/m, over 6283.19 rad/s',
    },
  ],
});
