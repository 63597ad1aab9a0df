import { defineFunction } from '../define';

export const noiseGain = defineFunction({
  name: 'NOISE.GAIN',
  family: 'level and dynamic range',
  summary: 'Low-frequency noise gain of a charge amplifier on a leaky, hot source.',
  equation: 'G_n = 1 + R_f/R_s',
  args: {
    feedbackResistance: { unit: 'MΩ', symbol: 'R_f', text: 'Feedback resistance of the charge amplifier.', above: 0 },
    sourceResistance: { unit: 'MΩ', symbol: 'R_s', text: 'Insulation resistance of sensor and cable.', above: 0 },
  },
  result: { unit: '1', symbol: 'G_n', text: 'Factor on the amplifier’s noise voltage and offset below its corner.' },
  validity: 'Ideal amplifier, below its lower corner.',
  source: { kind: 'derivation', from: 'non-inverting gain for the input’s own voltage' },

  compute: ({ feedbackResistance, sourceResistance }) => 1 + feedbackResistance / sourceResistance,

  examples: [
    { args: [1000, 10], result: 101, within: 1e-6, from: 'by hand: 1 + 100' },
    { args: [100, 100], result: 2, within: 1e-6, from: 'by hand: 1 + 1' },
  ],
});
