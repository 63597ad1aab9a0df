import { failure } from '../../core/issue';
import { outcome } from '../../core/issue';
import { extendedValue } from '../../core/level/spectrum';
import { onLogAxes } from './density';
import { defineFunction } from '../define';

export const psdLevel = defineFunction({
  name: 'PSD.LEVEL',
  family: 'level and dynamic range',
  summary: 'Spectral density at one frequency of a spectrum given by breakpoints.',
  equation: 'P = P₁·(f/f₁)^n, n = ln(P₂/P₁)/ln(f₂/f₁)',
  args: {
    spectrum: {
      kind: 'curve',
      x: 'Hz',
      y: 'g²/Hz',
      symbol: 'P',
      text: 'Acceleration spectral density against frequency.',
    },
    frequency: { unit: 'Hz', symbol: 'f', text: 'Frequency between the first and the last breakpoint.', above: 0 },
  },
  result: { unit: 'g²/Hz', symbol: 'P', text: 'Acceleration spectral density.' },
  validity: 'Between breakpoints only; at a step the larger of the two values.',
  source: { kind: 'derivation', from: 'straight line on log-log axes' },

  compute: ({ spectrum, frequency }) => {
    const table = onLogAxes(spectrum, 'spectrum', 'g²/Hz');
    if (!table.ok) return table;
    const [first = 0, last = 0] = [spectrum.x[0], spectrum.x[spectrum.x.length - 1]];
    if (frequency >= first && frequency <= last) return outcome(extendedValue(spectrum, frequency));
    return failure({
      code: 'beyond-data',
      arg: 'frequency',
      given: frequency,
      unit: 'Hz',
      rule: `${first} to ${last} Hz`,
    });
  },

  examples: [
    {
      args: ['10:0.01; 1000:0.0001', 100],
      result: 0.001,
      within: 1e-6,
      from: 'by hand, slope −1: a tenth at ten times the frequency',
    },
    {
      args: ['20:0.04; 80:0.01', 40],
      result: 0.02,
      within: 1e-6,
      from: 'by hand: halfway on a log axis is the geometric mean',
    },
  ],
});
