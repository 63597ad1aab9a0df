import { failure, outcome } from '../../core/issue';
import { decibels } from '../../core/level/margin';
import { tableArea } from '../../core/level/spectrum';
import { onLogAxes } from './density';
import { defineFunction } from '../define';

export const psdChange = defineFunction({
  name: 'PSD.CHANGE',
  family: 'level and dynamic range',
  summary: 'By how much to raise a whole spectrum to reach an r.m.s. acceleration.',
  equation: 'ΔL = 20·log₁₀(σ_wanted/σ)',
  args: {
    spectrum: {
      kind: 'curve',
      x: 'Hz',
      y: 'g²/Hz',
      symbol: 'P',
      text: 'Acceleration spectral density against frequency.',
    },
    wanted: { unit: 'g', symbol: 'σ', text: 'R.m.s. acceleration wanted or allowed.', above: 0, statistic: 'rms' },
  },
  result: { unit: 'dB', symbol: 'ΔL', text: 'Change of every breakpoint; negative lowers them.' },
  validity: 'As PSD.RMS, whose inverse it is.',
  source: { kind: 'derivation', from: 'σ² is proportional to the spectrum' },

  compute: ({ spectrum, wanted }) => {
    const table = onLogAxes(spectrum, 'spectrum', 'g²/Hz');
    if (!table.ok) return table;
    const area = tableArea(spectrum, 1, 0, Infinity);
    return area > 0
      ? outcome(decibels(wanted, Math.sqrt(area)))
      : failure({ code: 'no-result', rule: 'the spectrum has no width' });
  },

  examples: [
    {
      args: ['10:0.01; 110:0.01', 2],
      result: 6.0206,
      within: 1e-6,
      from: 'by hand: flat 0.01 over 100 Hz is 1 g; to 2 g',
    },
    {
      args: ['10:0.04; 110:0.04', 1],
      result: -6.0206,
      within: 1e-6,
      from: 'by hand: flat 0.04 over 100 Hz is 2 g; to 1 g',
    },
  ],
});
