import { defineFunction } from '../define';

export const chargeCableAllowed = defineFunction({
  name: 'CHARGE.CABLE.ALLOWED',
  family: 'frequency span',
  summary: 'Capacitance at which a charge amplifier loses a share of its sensitivity.',
  equation: 'C_t = e·A·C_f',
  args: {
    loss: { unit: '%', symbol: 'e', text: 'Loss of sensitivity allowed.', above: 0, below: 100 },
    openLoopGain: { unit: '1', symbol: 'A', text: 'Open-loop gain of the amplifier.', above: 0 },
    feedbackCapacitance: { unit: 'pF', symbol: 'C_f', text: 'Feedback capacitance.', above: 0 },
  },
  result: { unit: 'pF', symbol: 'C_t', text: 'Capacitance of sensor and cable.' },
  validity: 'As CHARGE.CABLE.LOSS, whose inverse it is.',
  source: { kind: 'derivation', from: 'e = C_t/(A·C_f) solved for C_t' },

  compute: ({ loss, openLoopGain, feedbackCapacitance }) => loss * openLoopGain * feedbackCapacitance,

  examples: [
    { args: [0.05, 20000, 1000], result: 10000, within: 1e-6, from: 'by hand: 0.0005 × 20000 × 1000' },
    { args: [0.02, 100000.0, 100], result: 2000, within: 1e-6, from: 'by hand: 0.0002 × 1e5 × 100' },
  ],
});
