import { decibels } from '../../core/level/margin';
import { defineFunction } from '../define';

export const dynamicRangeNeeded = defineFunction({
  name: 'DYNAMIC.RANGE.NEEDED',
  family: 'level and dynamic range',
  summary: 'Range a channel must offer, from the smallest to the largest level with margins at both ends.',
  equation: 'D = 20·log₁₀(a_peak/a_rms) + M + 20·log₁₀ m',
  args: {
    lowest: {
      unit: 'g',
      symbol: 'a_rms',
      text: 'Smallest level that must still be read, r.m.s.',
      above: 0,
      statistic: 'rms',
    },
    highest: { unit: 'g', symbol: 'a_peak', text: 'Largest expected peak.', above: 0, statistic: 'peak' },
    signalToNoise: {
      unit: 'dB',
      symbol: 'M',
      text: 'Signal-to-noise ratio kept at the low end.',
      atLeast: 0,
      default: 20,
    },
    margin: { unit: '1', symbol: 'm', text: 'Margin over the peak.', atLeast: 1, default: 1.5 },
  },
  result: { unit: 'dB', symbol: 'D', text: 'From the noise to the upper limit.' },
  validity: 'Judge both ends too: a range can be wide enough and sit in the wrong place.',
  source: { kind: 'derivation', from: 'sum of level differences' },

  compute: ({ lowest, highest, signalToNoise, margin }) =>
    decibels(highest, lowest) + signalToNoise + decibels(margin, 1),

  examples: [
    { args: [0.0008, 65], result: 121.7183, within: 1e-6, from: 'by hand: 98.19647 + 20 + 3.52183' },
    { args: [0.0005, 50, 0, 1], result: 100, within: 1e-6, from: 'by hand: five decades' },
  ],
});
