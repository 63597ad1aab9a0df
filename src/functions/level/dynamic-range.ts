import { availableRange } from '../../core/level/margin';
import { defineFunction } from '../define';

export const dynamicRange = defineFunction({
  name: 'DYNAMIC.RANGE',
  family: 'level and dynamic range',
  summary:
    'Range a channel offers, from the smallest level that keeps the signal-to-noise ratio up to its upper limit.',
  equation: 'D = 20·log₁₀(a_max/σ) − M',
  args: {
    ceiling: { unit: 'g', symbol: 'a_max', text: 'Upper limit of the channel, peak.', above: 0, statistic: 'peak' },
    noise: { unit: 'g', symbol: 'σ', text: 'Total r.m.s. noise.', above: 0, statistic: 'rms' },
    signalToNoise: {
      unit: 'dB',
      symbol: 'M',
      text: 'Signal-to-noise ratio kept at the low end.',
      atLeast: 0,
      default: 20,
    },
  },
  result: { unit: 'dB', symbol: 'D', text: 'Range from smallest r.m.s. to largest peak.' },
  validity: 'Judge both ends as well: a range can be wide enough and sit in the wrong place.',
  source: {
    kind: 'derivation',
    from: 'definition of a level difference; the default of 20 dB is common practice, no source',
  },

  compute: ({ ceiling, noise, signalToNoise }) => availableRange(ceiling, noise, signalToNoise),

  examples: [
    { args: [50, 0.0005, 0], result: 100, within: 1e-12, from: 'by hand: five decades are 100 dB' },
    { args: [50, 0.0001783476], result: 88.954, within: 1e-5, from: 'by hand: 20·log₁₀ 280351.4 − 20' },
  ],
});
