import { octaveBandwidth } from '../../core/level/detector';
import { defineFunction } from '../define';

export const bandwidthOctave = defineFunction({
  name: 'BANDWIDTH.OCTAVE',
  family: 'level and dynamic range',
  summary: 'Bandwidth of an octave or fractional-octave band.',
  equation: 'B = f·(G^(1/(2b)) − G^(−1/(2b))), G = 10^0.3 or 2',
  args: {
    centre: { unit: 'Hz', symbol: 'f', text: 'Exact centre frequency.', above: 0 },
    fraction: { unit: '1', symbol: 'b', text: '3 for third octaves, 1 for octaves.', above: 0, atMost: 48, default: 3 },
    base: { kind: 'choice', choices: ['ten', 'two'], text: 'Octave ratio: 10^0.3 or 2.', default: 'ten' },
  },
  result: { unit: 'Hz', symbol: 'B', text: 'Bandwidth.' },
  validity: 'Ideal band edges; a real filter’s noise bandwidth is close to it.',
  source: {
    kind: 'standard',
    cite: 'IEC 61260-1, octave-band and fractional-octave-band filters',
    locator: 'octave ratio and band edges; clause not read',
    read: 'from memory',
  },

  compute: ({ centre, fraction, base }) => octaveBandwidth(centre, fraction, base),

  examples: [
    { args: [1000], result: 230.7675, within: 1e-6, from: 'by hand: 10^0.05 − 10^−0.05 = 0.2307675' },
    { args: [1000, 3, 'two'], result: 231.5633, within: 1e-6, from: 'by hand: 2^(1/6) − 2^(−1/6) = 0.2315633' },
    { args: [100, 1, 'two'], result: 70.71068, within: 1e-6, from: 'by hand: √2 − 1/√2' },
  ],
});
