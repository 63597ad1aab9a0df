import { defineFunction } from '../define';

export const sourceResistanceNeeded = defineFunction({
  name: 'SOURCE.RESISTANCE.NEEDED',
  family: 'level and dynamic range',
  summary: 'Insulation resistance that keeps the noise gain of a charge amplifier.',
  equation: 'R_s = R_f/(G_n − 1)',
  args: {
    feedbackResistance: { unit: 'MΩ', symbol: 'R_f', text: 'Feedback resistance of the charge amplifier.', above: 0 },
    noiseGain: { unit: '1', symbol: 'G_n', text: 'Largest noise gain.', above: 1 },
  },
  result: { unit: 'MΩ', symbol: 'R_s', text: 'Insulation resistance of sensor and cable.' },
  validity: 'As NOISE.GAIN, whose inverse it is.',
  source: { kind: 'derivation', from: 'G_n = 1 + R_f/R_s solved for R_s' },

  compute: ({ feedbackResistance, noiseGain }) => feedbackResistance / (noiseGain - 1),

  examples: [
    { args: [1000, 101], result: 10, within: 1e-6, from: 'by hand: 1000/100' },
    { args: [100, 2], result: 100, within: 1e-6, from: 'by hand: 100/1' },
  ],
});
