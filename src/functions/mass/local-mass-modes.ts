import { failure, outcome } from '../../core/issue';
import { argument, modulus, reciprocal } from '../../core/mass/complex';
import { modalAccelerance } from '../../core/mass/modes';
import { FREQUENCY } from './plate-arguments';
import { MODE_LIST, modesOf } from './mode-list';
import { defineFunction } from '../define';

export const localMassModes = defineFunction({
  name: 'LOCAL.MASS.MODES',
  family: 'mass loading',
  summary: 'Local effective mass at a frequency from a list of modes, with its phase.',
  equation: 'm_eff = 1/A, A = −ω²·Σ φ_r²/(M_r·(ω_r²·(1 + 2jζ) − ω²))',
  args: {
    frequency: FREQUENCY,
    ...MODE_LIST,
    damping: { unit: '%', symbol: 'ζ', text: 'Damping ratio of all modes.', atLeast: 0, atMost: 50 },
  },
  result: {
    kind: 'row',
    columns: [
      { title: 'local mass', unit: 'gram', text: 'Modulus of the local effective mass.' },
      { title: 'phase', unit: 'deg', text: 'Its phase: 0 mass-like, 180 spring-like.' },
    ],
  },
  validity:
    'Structural damping 2ζ, equal to viscous damping at a resonance. Modes left out are missed most between resonances.',
  source: {
    kind: 'book',
    cite: 'D. J. Ewins, Modal Testing: Theory, Practice and Application, 2nd edition, Research Studies Press 2000',
    locator: 'modal series of the receptance with structural damping; equation not checked',
    read: 'from memory',
  },

  compute: ({ frequency, damping, ...lists }) => {
    const modes = modesOf(lists);
    if (!modes.ok) return modes;
    const local = reciprocal(modalAccelerance(modes.value, damping, frequency));
    return Number.isFinite(local.re) && Number.isFinite(local.im)
      ? outcome([modulus(local), argument(local)])
      : failure({ code: 'no-result', rule: 'the point is a node of every mode, or lies on an undamped resonance' });
  },

  examples: [
    {
      args: [80, [[98.36316431, 257.5181074]], [[1000, 1000]], [[-0.85065081, 0.52573111]], 1],
      result: [[693.976, -176.662]],
      within: 1e-5,
      from: 'two masses of 1 kg and springs of 1 MN/m with loss factor 0.02, by numpy: inverse of K(1 + 0.02j) − ω²M',
    },
    {
      args: [100, 0, 600, 1, 0],
      result: [[600, 0]],
      within: 1e-9,
      from: 'by definition: a free rigid body answers with its mass at every frequency',
    },
  ],
});
