import { levelEffect, LOADING_MODELS } from '../../core/mass/loading';
import { defineFunction } from '../define';

export const massLevel = defineFunction({
  name: 'MASS.LEVEL',
  family: 'mass loading',
  summary: 'Change of the measured level that an added mass causes.',
  equation: 'a′/a = 1/|1 + r·e^{jφ}|, φ = 0 (mass), 90° (plate), 45° (beam)',
  args: {
    ratio: { unit: '1', symbol: 'r', text: 'Mass-loading ratio.', atLeast: 0 },
    model: {
      kind: 'choice',
      choices: LOADING_MODELS,
      default: 'mass',
      text: 'What the local mass stands for: a mode or rigid part, a large plate, a long beam.',
    },
  },
  result: { unit: '%', text: 'Change of the level; negative is a drop.' },
  validity:
    'Structure driven by forces. Mass: above the resonance; just below a resonance a heavier sensor can raise the level. Plate and beam: average over many modes.',
  source: {
    kind: 'derivation',
    from: 'a′/a = 1/(1 + m/m_eff), with m_eff = Z/(jω); Z real for an infinite plate, at 45° for an infinite beam',
  },

  compute: ({ ratio, model }) => levelEffect(ratio, model).level,

  examples: [
    { args: [0.25], result: -20, within: 1e-12, from: 'by hand: 1/1.25' },
    { args: [0.75, 'plate'], result: -20, within: 1e-12, from: 'by hand: √(1 + 0.5625) = 1.25' },
    { args: [1, 'beam'], result: -45.8804, within: 1e-5, from: 'by hand: 1/√(2 + √2) = 1/1.847759 = 0.541196' },
  ],
});
