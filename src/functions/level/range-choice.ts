import { failure, outcome, type Outcome } from '../../core/issue';
import { decibels } from '../../core/level/margin';
import { inputNoiseDensity, noiseBandwidth, rootSumSquare, whiteNoise } from '../../core/level/noise';
import { fromSi } from '../../core/units';
import { defineFunction } from '../define';
import { ANALYSED_BAND, inBand } from './band';

/** One dynamic range for all input ranges, or one for each. */
const perRange = (dynamicRanges: readonly number[], ranges: readonly number[]): Outcome<readonly number[]> => {
  if (dynamicRanges.length === ranges.length) return outcome(dynamicRanges);
  const [only] = dynamicRanges;
  if (dynamicRanges.length === 1 && only !== undefined) return outcome(ranges.map(() => only));
  const given = `${dynamicRanges.length} values`;
  return failure({ code: 'wrong-size', arg: 'dynamicRanges', given, rule: `one value, or ${ranges.length}` });
};

export const rangeChoice = defineFunction({
  name: 'RANGE.CHOICE',
  family: 'level and dynamic range',
  summary: 'Table of input ranges and gains with the margin at both ends, and the smallest that fits marked.',
  equation: 'a_max = R/(g·S), σ = √(σ_s² + σ_R²), M_low = 20·log₁₀(a_rms/σ), M_high = 20·log₁₀(a_max/a_peak)',
  args: {
    ranges: { kind: 'list', unit: 'V', symbol: 'R', text: 'Peak voltage of each input range.', above: 0 },
    dynamicRanges: { kind: 'list', unit: 'dB', symbol: 'D', text: 'Dynamic range of each, or one for all.', above: 0 },
    sampleRate: { unit: 'Hz', symbol: 'f_s', text: 'Sample rate for which the dynamic ranges hold.', above: 0 },
    sensitivity: { unit: 'mV/g', symbol: 'S', text: 'Sensitivity before the gain; for charge pC/g × mV/pC.', above: 0 },
    sensorNoise: { unit: 'g', symbol: 'σ_s', text: 'R.m.s. noise of the sensor in the same band.', atLeast: 0 },
    lowest: { unit: 'g', symbol: 'a_rms', text: 'Smallest level that must still be read.', above: 0, statistic: 'rms' },
    highest: { unit: 'g', symbol: 'a_peak', text: 'Largest expected peak.', above: 0, statistic: 'peak' },
    ...ANALYSED_BAND,
    gains: { kind: 'list', unit: '1', symbol: 'g', text: 'Gains between sensor and input.', above: 0, optional: true },
    margin: { unit: '1', symbol: 'm', text: 'Margin over the peak for a range to fit.', atLeast: 1, default: 1.5 },
  },
  result: { kind: 'block', text: 'A heading row, then one row for each range and gain.' },
  validity:
    'Input and sensor only: full scale, supply and amplifier limits are for CEILING. A range fits when R ≥ m·g·a·S; the margin of 1.5 is common practice, no source.',
  source: { kind: 'derivation', from: 'NOISE.INPUT, NOISE.SUM, SIGNAL.TO.NOISE and HEADROOM for each setting' },

  compute: (given) => {
    const { ranges, sensitivity, lowest, highest, low, high, lineSpacing, margin } = given;
    const dynamicRanges = perRange(given.dynamicRanges, ranges);
    if (!dynamicRanges.ok) return dynamicRanges;
    const settings = inBand(low, high, () =>
      ranges.flatMap((range, i) =>
        (given.gains ?? [1]).map((gain) => {
          const density = inputNoiseDensity(range, dynamicRanges.value[i] ?? Number.NaN, given.sampleRate);
          const input = whiteNoise(density, noiseBandwidth(low, high, lineSpacing)) / (sensitivity * gain);
          return {
            range,
            gain,
            ceiling: range / (sensitivity * gain),
            noise: rootSumSquare([given.sensorNoise, input]),
          };
        }),
      ),
    );
    if (!settings.ok) return settings;
    const fitting = settings.value.filter(({ ceiling }) => ceiling >= margin * highest).map(({ ceiling }) => ceiling);
    const smallest = Math.min(...fitting);
    return outcome([
      ['range V', 'gain', 'noise g r.m.s.', 'signal to noise dB', 'upper limit g', 'headroom dB', 'choice'],
      ...settings.value.map(({ range, gain, ceiling, noise }) => [
        range,
        gain,
        fromSi(noise, 'g'),
        decibels(lowest, noise),
        fromSi(ceiling, 'g'),
        decibels(ceiling, highest),
        ceiling === smallest ? 'smallest that fits' : '',
      ]),
    ]);
  },

  examples: [
    {
      args: ['1; 10', 110, 51200, 100, 0, 0.01, 5, 0, 25600],
      result: [
        ['range V', 'gain', 'noise g r.m.s.', 'signal to noise dB', 'upper limit g', 'headroom dB', 'choice'],
        [1, 1, 2.23606798e-5, 53.0103, 10, 6.0206, 'smallest that fits'],
        [10, 1, 2.23606798e-4, 33.0103, 100, 26.0206, ''],
      ],
      within: 1e-6,
      from: 'by hand: 0.70710678 V × 10^−5.5 = 2.2360680 µV; /0.1 V/g; ten times the range costs 20 dB',
    },
    {
      args: ['10', '110', 51200, 10, 0.002, 0.6, 65, 0, 25600, null, '1; 10'],
      result: [
        ['range V', 'gain', 'noise g r.m.s.', 'signal to noise dB', 'upper limit g', 'headroom dB', 'choice'],
        [10, 1, 0.003, 46.0206, 1000, 23.741733, ''],
        [10, 10, 0.00201246118, 49.488475, 100, 3.7417329, 'smallest that fits'],
      ],
      within: 1e-6,
      from: 'by hand: 2 mg with 2.236068 mg is 3 mg, with 0.2236068 mg 2.01246 mg',
    },
  ],
});
