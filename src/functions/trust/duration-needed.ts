import { durationForUncertainty } from '../../core/trust/sources';
import { defineFunction } from '../define';

export const durationNeeded = defineFunction({
  name: 'DURATION.NEEDED',
  family: 'trust',
  summary: 'Averaging time that brings the statistical uncertainty down.',
  equation: 'T = 1/(4·B·u²)',
  args: {
    bandwidth: { unit: 'Hz', symbol: 'B', text: 'Bandwidth of the r.m.s. value or of one line.', above: 0 },
    uncertainty: { unit: '%', symbol: 'u', text: 'Standard uncertainty accepted.', above: 0, below: 100 },
  },
  result: { unit: 's', symbol: 'T', text: 'Averaging time.' },
  validity: 'As UNCERTAINTY.STATISTICAL, whose inverse it is.',
  source: { kind: 'derivation', from: 'u = 1/(2·√(B·T)) solved for T' },

  compute: ({ bandwidth, uncertainty }) => durationForUncertainty(bandwidth, uncertainty),

  examples: [
    { args: [100, 1], result: 25, within: 1e-12, from: 'by hand: 1/(400 × 0.0001)' },
    { args: [1, 5], result: 100, within: 1e-12, from: 'by hand: 1/(4 × 0.0025)' },
  ],
});
