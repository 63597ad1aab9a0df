import { levelEffect, LOADING_MODELS } from '../../core/mass/loading';
import { defineFunction } from '../define';

export const massPhase = defineFunction({
  name: 'MASS.PHASE',
  family: 'mass loading',
  summary: 'Change of the phase that an added mass causes.',
  equation: 'φ′ = −arg(1 + r·e^{jφ}), φ = 0 (mass), 90° (plate), 45° (beam)',
  args: {
    ratio: { unit: '1', symbol: 'r', text: 'Mass-loading ratio.', atLeast: 0 },
    model: {
      kind: 'choice',
      choices: LOADING_MODELS,
      default: 'mass',
      text: 'What the local mass stands for: a mode or rigid part, a large plate, a long beam.',
    },
  },
  result: { unit: 'deg', symbol: 'φ′', text: 'Change of the phase; negative is a lag.' },
  validity: 'As MASS.LEVEL. On plates the phase suffers long before the level: it decides for transfer functions.',
  source: {
    kind: 'derivation',
    from: 'a′/a = 1/(1 + m/m_eff), with m_eff = Z/(jω); Z real for an infinite plate, at 45° for an infinite beam',
  },

  compute: ({ ratio, model }) => levelEffect(ratio, model).phase,

  examples: [
    { args: [1, 'plate'], result: -45, within: 1e-12, from: 'by hand: arctan 1' },
    { args: [1, 'beam'], result: -22.5, within: 1e-12, from: 'by hand: half of 45°, both terms being equally long' },
    { args: [0.3], result: 0, within: 1e-12, from: 'by definition: a pure mass turns no phase' },
  ],
});
