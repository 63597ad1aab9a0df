import { plateModalDensity } from '../../core/mass/plate-waves';
import { PLATE } from './plate-arguments';
import { defineFunction } from '../define';

export const modalDensityPlate = defineFunction({
  name: 'MODAL.DENSITY.PLATE',
  family: 'mass loading',
  summary: 'Modes per hertz of a thin panel.',
  equation: 'n = (a·b/2)·√(ρh/B′)',
  args: {
    length: { unit: 'mm', symbol: 'a', text: 'Length of the panel.', above: 0 },
    width: { unit: 'mm', symbol: 'b', text: 'Width of the panel.', above: 0 },
    ...PLATE,
  },
  result: { unit: '1/Hz', symbol: 'n', text: 'Modal density, the same at every frequency.' },
  validity:
    'Any edges; holds once several modes lie below the frequency. An infinite-plate local mass is an average over such modes.',
  source: {
    kind: 'book',
    cite: 'L. Cremer, M. Heckl, E. E. Ungar, Structure-Borne Sound, 2nd edition, Springer 1988',
    locator: 'modal density of plates; section number not checked',
    read: 'from memory',
  },

  compute: ({ length, width, ...plate }) => plateModalDensity(plate, length * width),

  examples: [
    { args: [500, 400, 1, 70, 2700, 0.33], result: 0.0642224, within: 1e-6, from: 'by numpy, (S/2)·√(m″/B′)' },
    {
      args: [500, 400, 2, 70, 2700, 0.33],
      result: 0.0321112,
      within: 1e-6,
      from: 'by hand: twice as thick, half of it',
    },
  ],
});
