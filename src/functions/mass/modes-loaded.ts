import { mapped } from '../../core/issue';
import { fromSi } from '../../core/units';
import { loadedFrequencies } from '../../core/mass/modes';
import { MODE_LIST, modesOf } from './mode-list';
import { defineFunction } from '../define';

export const modesLoaded = defineFunction({
  name: 'MODES.LOADED',
  family: 'mass loading',
  summary: 'Natural frequencies with a mass added at the point, exact for the listed modes.',
  equation: 'eigenvalues of B^(−½)·Λ·B^(−½), B = I + m·ψψᵀ, ψ = φ/√M_r',
  args: {
    addedMass: { unit: 'gram', symbol: 'm', text: 'Sensor, mount and cable together.', atLeast: 0 },
    ...MODE_LIST,
  },
  result: { kind: 'block', text: 'Natural frequencies in Hz, rising, one below the other.' },
  validity: 'All modes that matter listed: leaving out higher ones makes the drop look smaller. No mode rises.',
  source: {
    kind: 'derivation',
    from: 'kinetic energy ½m·(Σφ_r·q_r)² added to that of the modes: (Λ − ω²·(I + m·ψψᵀ))·q = 0',
  },

  compute: ({ addedMass, ...lists }) =>
    mapped(modesOf(lists), (modes) =>
      loadedFrequencies(modes, addedMass).map((frequency) => [fromSi(frequency, 'Hz')]),
    ),

  examples: [
    {
      args: [100, [[98.36316431, 257.5181074]], [[1000, 1000]], [[-0.85065081, 0.52573111]]],
      result: [[94.972534], [254.299727]],
      within: 1e-7,
      from: 'two masses of 1 kg and springs of 1 MN/m, 0.1 kg added at the end, by scipy.linalg.eigh on the full matrices',
    },
    { args: [300, 50, 400, 1], result: [[37.7964]], within: 1e-5, from: 'by hand: 50/√1.75' },
  ],
});
