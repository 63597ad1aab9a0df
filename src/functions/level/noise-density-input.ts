import { inputNoiseDensity } from '../../core/level/noise';
import { defineFunction } from '../define';

export const noiseDensityInput = defineFunction({
  name: 'NOISE.DENSITY.INPUT',
  family: 'level and dynamic range',
  summary: 'Noise density of an analyser input as acceleration at the sensor.',
  equation: 'd = (R/√2)·10^(−D/20)/√(f_s/2)/S',
  args: {
    range: { unit: 'V', symbol: 'R', text: 'Peak voltage of the input range in use.', above: 0 },
    dynamicRange: { unit: 'dB', symbol: 'D', text: 'Noise below an r.m.s. full-scale sine of that range.', above: 0 },
    sampleRate: { unit: 'Hz', symbol: 'f_s', text: 'Sample rate for which the dynamic range holds.', above: 0 },
    sensitivity: {
      unit: 'mV/g',
      symbol: 'S',
      text: 'Smallest sensitivity over the temperature range; charge: pC/g times mV/pC.',
      above: 0,
    },
  },
  result: { unit: 'µg/√Hz', symbol: 'd', text: 'Noise density at the sensor.' },
  validity: 'White noise to half the sample rate.',
  source: { kind: 'derivation', from: 'definition of dynamic range re r.m.s. full-scale sine, white' },

  compute: ({ range, dynamicRange, sampleRate, sensitivity }) =>
    inputNoiseDensity(range, dynamicRange, sampleRate) / sensitivity,

  examples: [
    {
      args: [10, 110, 51200, 100],
      result: 1.3975425,
      within: 1e-7,
      from: 'by hand: 22.36068 µV/√25600 Hz = 0.1397542 µV/√Hz; /100 mV/g',
    },
    {
      args: [1, 110, 51200, 10],
      result: 1.3975425,
      within: 1e-7,
      from: 'by hand: a tenth of the range at a tenth of the sensitivity',
    },
  ],
});
