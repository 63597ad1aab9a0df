import { inputNoiseDensity, noiseBandwidth, whiteNoise } from '../../core/level/noise';
import { defineFunction } from '../define';
import { ANALYSED_BAND, inBand } from './band';

export const noiseInput = defineFunction({
  name: 'NOISE.INPUT',
  family: 'level and dynamic range',
  summary: 'R.m.s. noise of an analyser input in the analysed band, as acceleration at the sensor.',
  equation: 'σ = (R/√2)·10^(−D/20)·√(B/(f_s/2))/S, B = f₂ − f₁ or 1.5·Δf',
  args: {
    range: { unit: 'V', symbol: 'R', text: 'Peak voltage of the input range in use.', above: 0 },
    dynamicRange: {
      unit: 'dB',
      symbol: 'D',
      text: 'Noise below an r.m.s. full-scale sine of that range, over half the sample rate.',
      above: 0,
    },
    sampleRate: { unit: 'Hz', symbol: 'f_s', text: 'Sample rate for which the dynamic range holds.', above: 0 },
    sensitivity: {
      unit: 'mV/g',
      symbol: 'S',
      text: 'Smallest sensitivity over the temperature range; charge: pC/g times mV/pC.',
      above: 0,
    },
    ...ANALYSED_BAND,
  },
  result: { unit: 'g', symbol: 'σ', text: 'R.m.s. noise at the sensor.' },
  validity: 'White noise to half the sample rate; state the dynamic range for the range in use, it differs by range.',
  source: {
    kind: 'derivation',
    from: 'definition of dynamic range re r.m.s. full-scale sine; white noise ∝ √bandwidth',
  },

  compute: ({ range, dynamicRange, sampleRate, sensitivity, low, high, lineSpacing }) =>
    inBand(
      low,
      high,
      () =>
        whiteNoise(inputNoiseDensity(range, dynamicRange, sampleRate), noiseBandwidth(low, high, lineSpacing)) /
        sensitivity,
    ),

  examples: [
    {
      args: [10, 110, 51200, 100, 0, 25600],
      result: 0.0002236068,
      within: 2e-8,
      from: 'by hand, whole band: 7.0710678 V × 10^−5.5 = 22.360680 µV; /0.1 V/g',
    },
    {
      args: [10, 110, 51200, 10, 0, 25600],
      result: 0.002236068,
      within: 2e-8,
      from: 'by hand, as before at 10 mV/g: 22.360680 µV/0.01 V/g',
    },
    {
      args: [1, 110, 51200, 100, 10, 500, 1],
      result: 1.711633e-7,
      within: 1e-7,
      from: 'by hand, one Hann line: 2.2360680 µV/√25600 × √1.5/0.1',
    },
  ],
});
