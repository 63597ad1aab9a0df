import { beamWavelength } from '../../core/mass/plate-waves';
import { BEAM, FREQUENCY } from './plate-arguments';
import { defineFunction } from '../define';

export const wavelengthBeam = defineFunction({
  name: 'WAVELENGTH.BEAM',
  family: 'mass loading',
  summary: 'Bending wavelength of a slender beam.',
  equation: 'λ_B = c_B/f, c_B = (EI·ω²/m′)^¼',
  args: { frequency: FREQUENCY, ...BEAM },
  result: { unit: 'mm', symbol: 'λ_B', text: 'Bending wavelength.' },
  validity:
    'Wavelength well above the depth of the beam. Points count as far from an end from about λ/2 (common practice).',
  source: {
    kind: 'book',
    cite: 'L. Cremer, M. Heckl, E. E. Ungar, Structure-Borne Sound, 2nd edition, Springer 1988',
    locator: 'bending waves of beams; section number not checked',
    read: 'from memory',
  },

  compute: ({ frequency, ...beam }) => beamWavelength(beam, frequency),

  examples: [
    { args: [1000, 3.15, 0.162], result: 166.452, within: 1e-5, from: 'by numpy: 2π/k with k⁴ = m′ω²/EI' },
    {
      args: [250, 3.15, 0.162],
      result: 332.904,
      within: 1e-5,
      from: 'by hand: a quarter of the frequency, twice 166.452',
    },
  ],
});
