import { slopeBetween } from '../../core/level/spectrum';
import { defineFunction } from '../define';

export const psdSlope = defineFunction({
  name: 'PSD.SLOPE',
  family: 'level and dynamic range',
  summary: 'Slope between two points of a spectrum, in dB per octave.',
  equation: 's = 10·log₁₀(P₂/P₁)/log₂(f₂/f₁)',
  args: {
    frequency: { unit: 'Hz', symbol: 'f₁', text: 'Frequency of the first point.', above: 0 },
    level: { unit: 'g²/Hz', symbol: 'P₁', text: 'Spectral density there.', above: 0 },
    target: { unit: 'Hz', symbol: 'f₂', text: 'Frequency of the second point.', above: 0 },
    targetLevel: { unit: 'g²/Hz', symbol: 'P₂', text: 'Spectral density there.', above: 0 },
  },
  result: { unit: 'dB/oct', symbol: 's', text: 'Slope in dB of power per octave.' },
  validity: 'Straight line on log-log axes, two different frequencies.',
  source: { kind: 'derivation', from: '10·log₁₀ of a power ratio over log₂ of a frequency ratio' },

  compute: ({ frequency, level, target, targetLevel }) => slopeBetween(frequency, level, target, targetLevel),

  examples: [
    { args: [20, 0.01, 80, 0.04], result: 3.0103, within: 1e-6, from: 'by hand: 6.0206 dB over two octaves' },
    { args: [10, 0.1, 1000, 0.001], result: -3.0103, within: 1e-6, from: 'by hand: −20 dB over 6.643856 octaves' },
  ],
});
