import { decibels } from '../../core/level/margin';
import { inputNoiseDensity, noiseBandwidth, whiteNoise } from '../../core/level/noise';
import { ANALYSED_BAND, inBand } from './band';
import { defineFunction } from '../define';

export const inputDynamicNeeded = defineFunction({
  name: 'INPUT.DYNAMIC.NEEDED',
  family: 'level and dynamic range',
  summary: 'Dynamic range an input needs for its noise to stay under a share of the noise budget.',
  equation: 'D = 20·log₁₀((R/√2)·√(B/(f_s/2))/(σ·S))',
  args: {
    range: { unit: 'V', symbol: 'R', text: 'Peak voltage of the input range in use.', above: 0 },
    noise: {
      unit: 'g',
      symbol: 'σ',
      text: 'R.m.s. noise allowed to the input, at the sensor.',
      above: 0,
      statistic: 'rms',
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
  result: { unit: 'dB', symbol: 'D', text: 'Dynamic range re r.m.s. full-scale sine.' },
  validity: 'As NOISE.INPUT, whose inverse it is.',
  source: { kind: 'derivation', from: 'σ of NOISE.INPUT solved for D' },

  compute: ({ range, noise, sampleRate, sensitivity, low, high, lineSpacing }) =>
    inBand(low, high, () =>
      decibels(
        whiteNoise(inputNoiseDensity(range, 0, sampleRate), noiseBandwidth(low, high, lineSpacing)),
        noise * sensitivity,
      ),
    ),

  examples: [
    {
      args: [10, 0.0002236067977, 51200, 100, 0, 25600],
      result: 110,
      within: 1e-6,
      from: 'by hand: 20·log₁₀(7.0710678 V/22.36068 µV)',
    },
    {
      args: [1, 0.001, 51200, 100, 0, 25600],
      result: 76.9897,
      within: 1e-6,
      from: 'by hand: 20·log₁₀(0.70710678 V/100 µV)',
    },
  ],
});
