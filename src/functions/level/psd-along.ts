import { slopeExponent } from '../../core/level/spectrum';
import { defineFunction } from '../define';

export const psdAlong = defineFunction({
  name: 'PSD.ALONG',
  family: 'level and dynamic range',
  summary: 'Spectral density reached from one point along a slope in dB per octave.',
  equation: 'P₂ = P₁·(f₂/f₁)^n, n = s/(10·log₁₀2)',
  args: {
    frequency: { unit: 'Hz', symbol: 'f₁', text: 'Frequency of the known point.', above: 0 },
    level: { unit: 'g²/Hz', symbol: 'P₁', text: 'Spectral density there.', above: 0 },
    slope: { unit: 'dB/oct', symbol: 's', text: 'Slope; negative falls with frequency.', atLeast: -100, atMost: 100 },
    target: { unit: 'Hz', symbol: 'f₂', text: 'Frequency wanted.', above: 0 },
  },
  result: { unit: 'g²/Hz', symbol: 'P₂', text: 'Acceleration spectral density.' },
  validity: 'dB of power. 6 dB per octave is an exponent of 1.993, not 2; printed breakpoints are often rounded.',
  source: { kind: 'derivation', from: 'an octave is a factor 2 in frequency, s dB a factor 10^(s/10) in power' },

  compute: ({ frequency, level, slope, target }) => level * (target / frequency) ** slopeExponent(slope),

  examples: [
    {
      args: [20, 0.026, 6, 50],
      result: 0.16,
      within: 0.01,
      from: 'GSFC-STD-7000 qualification, breakpoint printed there rounded to 0.16 (from memory)',
    },
    { args: [100, 0.04, -3, 200], result: 0.02004749, within: 1e-6, from: 'by hand: one octave at −3 dB is 10^−0.3' },
  ],
});
