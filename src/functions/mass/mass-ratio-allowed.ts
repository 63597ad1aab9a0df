import { LOADING_MODELS, ratioForFrequencyDrop, ratioForLevelDrop } from '../../core/mass/loading';
import { defineFunction } from '../define';

export const massRatioAllowed = defineFunction({
  name: 'MASS.RATIO.ALLOWED',
  family: 'mass loading',
  summary: 'Largest mass-loading ratio that keeps a drop of frequency or level.',
  equation: 'frequency: r = 1/(1 − δ)² − 1; level: |1 + r·e^{jφ}| = 1/(1 − δ)',
  args: {
    drop: { unit: '%', symbol: 'δ', text: 'Largest drop accepted, as a positive number.', above: 0, below: 100 },
    effect: {
      kind: 'choice',
      choices: ['frequency', 'level'],
      default: 'frequency',
      text: 'Which drop is limited.',
    },
    model: {
      kind: 'choice',
      choices: LOADING_MODELS,
      default: 'mass',
      text: 'What the local mass stands for: a mode or rigid part, a large plate, a long beam.',
    },
  },
  result: { unit: '1', symbol: 'r', text: 'Largest mass-loading ratio.' },
  validity: 'As MASS.SHIFT and MASS.LEVEL, whose inverse it is. The model only matters for the level.',
  source: { kind: 'derivation', from: '1/√(1 + r) = 1 − δ, or 1 + 2r·cos φ + r² = 1/(1 − δ)², solved for r' },

  compute: ({ drop, effect, model }) =>
    effect === 'frequency' ? ratioForFrequencyDrop(drop) : ratioForLevelDrop(drop, model),

  examples: [
    { args: [20], result: 0.5625, within: 1e-12, from: 'by hand: 1/0.64 − 1' },
    { args: [20, 'level'], result: 0.25, within: 1e-12, from: 'by hand: 1/0.8 − 1' },
    { args: [20, 'level', 'plate'], result: 0.75, within: 1e-12, from: 'by hand: √(1.25² − 1)' },
    {
      args: [10, 'level', 'beam'],
      result: 0.1499626,
      within: 1e-6,
      from: 'by scipy brentq on |1/(1 + r·e^{jπ/4})| = 0.9',
    },
  ],
});
