import { failure } from '../../core/issue';
import { countPlateModes, plateModalDensity } from '../../core/mass/plate-waves';
import { FREQUENCY, PLATE } from './plate-arguments';
import { defineFunction } from '../define';

/** The count takes time in proportion to its root; beyond this a density says more. */
const MOST_MODES = 1e9;

export const modesPlate = defineFunction({
  name: 'MODES.PLATE',
  family: 'mass loading',
  summary: 'How many modes of a simply supported panel lie up to a frequency.',
  equation: 'f_ik = (π/2)·√(B′/ρh)·((i/a)² + (k/b)²)',
  args: {
    frequency: FREQUENCY,
    length: { unit: 'mm', symbol: 'a', text: 'Length of the panel.', above: 0 },
    width: { unit: 'mm', symbol: 'b', text: 'Width of the panel.', above: 0 },
    ...PLATE,
  },
  result: { unit: '1', text: 'Number of modes.' },
  validity:
    'Simply supported edges, thin plate. Below about five modes do not trust a plate average: use modal local masses.',
  source: {
    kind: 'book',
    cite: 'R. D. Blevins, Formulas for Natural Frequency and Mode Shape, Van Nostrand Reinhold 1979',
    locator: 'table of rectangular plates, simply supported; row not checked',
    read: 'from memory',
  },

  compute: ({ frequency, length, width, ...plate }) =>
    frequency * plateModalDensity(plate, length * width) > MOST_MODES
      ? failure({ code: 'no-result', rule: `more than ${MOST_MODES} modes: use MODAL.DENSITY.PLATE` })
      : countPlateModes(plate, length, width, frequency),

  examples: [
    {
      args: [1000, 500, 400, 1, 70, 2700, 0.33],
      result: 55,
      within: 0,
      from: 'counted in Python over all pairs up to 59',
    },
    {
      args: [30, 500, 400, 1, 70, 2700, 0.33],
      result: 1,
      within: 0,
      from: 'by hand: 2.44587 × (4 + 6.25) = 25.1 Hz and 2.44587 × (16 + 6.25) = 54.4 Hz',
    },
  ],
});
