import { statisticalUncertainty } from '../../core/trust/sources';
import { defineFunction } from '../define';

export const uncertaintyStatistical = defineFunction({
  name: 'UNCERTAINTY.STATISTICAL',
  family: 'trust',
  summary: 'Statistical uncertainty of an r.m.s. value of random vibration.',
  equation: 'u = 1/(2·√(B·T))',
  args: {
    bandwidth: { unit: 'Hz', symbol: 'B', text: 'Bandwidth of the r.m.s. value or of one line.', above: 0 },
    duration: { unit: 's', symbol: 'T', text: 'Averaging time.', above: 0 },
  },
  result: { unit: '%', symbol: 'u', text: 'Standard uncertainty.' },
  validity: 'Stationary Gaussian noise, flat over the band, B·T well above 1.',
  source: {
    kind: 'book',
    cite: 'J. S. Bendat, A. G. Piersol, Random Data, 4th edition, Wiley 2010',
    locator: 'normalised random error of an r.m.s. estimate; equation not checked',
    read: 'from memory',
  },

  compute: ({ bandwidth, duration }) => statisticalUncertainty(bandwidth, duration),

  examples: [
    { args: [100, 25], result: 1, within: 1e-12, from: 'by hand: 1/(2 × 50)' },
    { args: [100, 30], result: 0.912871, within: 1e-6, from: 'by hand: 1/(2 × 54.7723)' },
  ],
});
