import { rampVerdict } from '../../core/thermal/transient';
import { defineFunction } from '../define';

export const verdictRamp = defineFunction({
  name: 'VERDICT.RAMP',
  family: 'verdict',
  summary: 'Verdict on the false output of a temperature ramp beside the lowest level.',
  equation: 'WARN if a > a_low/3; FAIL if a > a_low and the band starts below 5·f_c; else PASS',
  args: {
    rampError: { unit: 'g', symbol: 'a', text: 'False output of the ramp, as by THERMAL.RAMP.', forgiving: true },
    levelLow: {
      unit: 'g',
      symbol: 'a_low',
      statistic: 'rms',
      text: 'Lowest level that must be read.',
      forgiving: true,
    },
    bandLow: { unit: 'Hz', text: 'Lower edge of the needed band.', forgiving: true },
    corner: { unit: 'Hz', symbol: 'f_c', text: 'Low corner (−3 dB) of the chain.', forgiving: true },
  },
  result: { kind: 'text', text: 'PASS, WARN, FAIL or INCOMPLETE.' },
  validity: 'A ramp’s output is slow: a band that starts well above the corner filters it away.',
  source: { kind: 'practice', note: 'common practice, no source' },

  compute: ({ rampError, levelLow, bandLow, corner }) =>
    rampError === undefined || levelLow === undefined || bandLow === undefined || corner === undefined
      ? 'INCOMPLETE'
      : rampVerdict(rampError, levelLow, bandLow, corner),

  examples: [
    { args: [0.0001, 0.0008, 0.5, 0.16], result: 'PASS', from: 'by definition: an eighth of the lowest level' },
    { args: [0.0004, 0.0008, 0.5, 0.16], result: 'WARN', from: 'by definition: half of the lowest level' },
    { args: [0.0021, 0.0008, 0.5, 0.16], result: 'FAIL', from: 'by definition: above it, and 0.5 Hz < 0.8 Hz' },
    { args: [0.0021, 0.0008, 5, 0.16], result: 'WARN', from: 'by definition: above it, but 5 Hz ≥ 0.8 Hz' },
    { args: [null, 0.0008, 5, 0.16], result: 'INCOMPLETE', from: 'by definition: nothing to judge' },
  ],
});
