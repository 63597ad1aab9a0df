import { WINDOW_BANDWIDTH } from '../../core/level/detector';
import { defineFunction } from '../define';

export const bandwidthLine = defineFunction({
  name: 'BANDWIDTH.LINE',
  family: 'level and dynamic range',
  summary: 'Noise bandwidth of one spectral line.',
  equation: 'B = c·Δf, c = 1.5 Hann, 1 rectangular, about 3.8 flat top',
  args: {
    lineSpacing: { unit: 'Hz', symbol: 'Δf', text: 'Line spacing.', above: 0 },
    window: {
      kind: 'choice',
      choices: ['Hann', 'rectangular', 'flat top'],
      text: 'Window of the analysis.',
      default: 'Hann',
    },
  },
  result: { unit: 'Hz', symbol: 'B', text: 'Equivalent noise bandwidth.' },
  validity: 'Hann and rectangular exact; flat top differs by design, about 3.8 (from memory).',
  source: { kind: 'derivation', from: 'c = N·Σw²/(Σw)² of the window’s samples' },

  compute: ({ lineSpacing, window }) => WINDOW_BANDWIDTH[window] * lineSpacing,

  examples: [
    {
      args: [1],
      result: 1.5,
      within: 1e-6,
      from: 'scipy.signal.get_window: N·Σw²/(Σw)² = 1.5 for the periodic Hann window',
    },
    { args: [0.5, 'rectangular'], result: 0.5, within: 1e-6, from: 'definition' },
  ],
});
