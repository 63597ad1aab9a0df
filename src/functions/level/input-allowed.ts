import { defineFunction } from '../define';

export const inputAllowed = defineFunction({
  name: 'INPUT.ALLOWED',
  family: 'level and dynamic range',
  summary: 'Largest sine at the base whose resonant response stays under a limit.',
  equation: 'a_in = a_out/Q',
  args: {
    ceiling: {
      unit: 'g',
      symbol: 'a_out',
      text: 'Upper limit of the channel on the mode, peak.',
      above: 0,
      statistic: 'peak',
    },
    qualityFactor: { unit: '1', symbol: 'Q', text: 'Quality factor, 1/(2ζ).', above: 0 },
  },
  result: { unit: 'g', symbol: 'a_in', text: 'Peak level at the base.' },
  validity: 'As RESPONSE.SINE, whose inverse it is.',
  source: { kind: 'derivation', from: 'a_out = Q·a_in solved for a_in' },

  compute: ({ ceiling, qualityFactor }) => ceiling / qualityFactor,

  examples: [
    { args: [50, 25], result: 2, within: 1e-6, from: 'by hand: 50/25' },
    { args: [98, 10], result: 9.8, within: 1e-6, from: 'by hand: 98/10' },
  ],
});
