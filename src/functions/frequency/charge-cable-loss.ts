import { chargeCableLoss as lossToCable } from '../../core/frequency/cable';
import { defineFunction } from '../define';

export const chargeCableLoss = defineFunction({
  name: 'CHARGE.CABLE.LOSS',
  family: 'frequency span',
  summary: 'Sensitivity that a charge amplifier loses to the capacitance at its input.',
  equation: 'e = C_t/(A·C_f)',
  args: {
    capacitance: { unit: 'pF', symbol: 'C_t', text: 'Capacitance of sensor and cable.', atLeast: 0 },
    openLoopGain: { unit: '1', symbol: 'A', text: 'Open-loop gain of the amplifier.', above: 0 },
    feedbackCapacitance: { unit: 'pF', symbol: 'C_f', text: 'Feedback capacitance.', above: 0 },
  },
  result: { unit: '%', symbol: 'e', text: 'Loss of sensitivity.' },
  validity: 'First order in a small loss: charge sensitivity hardly depends on cable length.',
  source: { kind: 'derivation', from: 'finite gain leaves C_t/A beside C_f at the summing point' },

  compute: ({ capacitance, openLoopGain, feedbackCapacitance }) =>
    lossToCable(capacitance, openLoopGain, feedbackCapacitance),

  examples: [
    { args: [10000, 20000, 1000], result: 0.05, within: 1e-6, from: 'by hand: 10/(20000 × 1)' },
    { args: [2000, 100000.0, 100], result: 0.02, within: 1e-6, from: 'by hand: 2000/(1e5 × 100)' },
  ],
});
