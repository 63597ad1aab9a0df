import { plateWavelength } from '../../core/mass/plate-waves';
import { FREQUENCY, PLATE } from './plate-arguments';
import { defineFunction } from '../define';

export const wavelengthPlate = defineFunction({
  name: 'WAVELENGTH.PLATE',
  family: 'mass loading',
  summary: 'Bending wavelength of a thin plate.',
  equation: 'λ_B = 2π/(ω²·ρh/B′)^¼',
  args: { frequency: FREQUENCY, ...PLATE },
  result: { unit: 'mm', symbol: 'λ_B', text: 'Bending wavelength.' },
  validity: 'Common practice: thickness below λ/6, sensor base below λ/10, point λ/4 off edges and stiffeners.',
  source: {
    kind: 'book',
    cite: 'L. Cremer, M. Heckl, E. E. Ungar, Structure-Borne Sound, 2nd edition, Springer 1988',
    locator: 'bending waves of thin plates; section number not checked',
    read: 'from memory',
  },

  compute: ({ frequency, ...plate }) => plateWavelength(plate, frequency),

  examples: [
    { args: [1000, 1, 70, 2700, 0.33], result: 98.9115, within: 1e-6, from: 'by numpy, 2π/(ω²m″/B′)^¼' },
    {
      args: [4000, 1, 70, 2700, 0.33],
      result: 49.4557,
      within: 1e-5,
      from: 'by hand: four times the frequency, half of 98.9115',
    },
  ],
});
