import { currentNeeded as currentToDrive } from '../../core/frequency/cable';
import { defineFunction } from '../define';

export const currentNeeded = defineFunction({
  name: 'CURRENT.NEEDED',
  family: 'frequency span',
  summary: 'Supply current that drives a cable at the upper band edge and the expected peak.',
  equation: 'I = 2πf·C·a·S + I_s',
  args: {
    high: { unit: 'Hz', symbol: 'f', text: 'Upper edge of the needed band.', above: 0 },
    sensorCurrent: { unit: 'mA', symbol: 'I_s', text: 'Current the sensor keeps for itself.', atLeast: 0 },
    capacitance: { unit: 'pF', symbol: 'C', text: 'Capacitance of the whole cable.', above: 0 },
    highest: { unit: 'g', symbol: 'a', text: 'Largest expected peak.', above: 0, statistic: 'peak' },
    sensitivity: { unit: 'mV/g', symbol: 'S', text: 'Largest sensitivity over the temperature range.', above: 0 },
  },
  result: { unit: 'mA', symbol: 'I', text: 'Constant current of the supply.' },
  validity: 'As CABLE.LIMIT, whose inverse it is. More current heats the sensor and may exceed its rating.',
  source: { kind: 'derivation', from: 'i = C·du/dt, for a sine i = 2πf·C·V' },

  compute: ({ high, sensorCurrent, capacitance, highest, sensitivity }) =>
    currentToDrive(high, sensorCurrent, capacitance, highest * sensitivity),

  examples: [
    {
      args: [10000, 1, 30000, 50, 100],
      result: 10.42478,
      within: 1e-6,
      from: 'by hand: 2π × 10 kHz × 30 nF × 5 V = 9.424778 mA, and 1 mA',
    },
    { args: [1000, 0.5, '10 nF', 100, 10], result: 0.5628319, within: 1e-6, from: 'by hand: 0.0628319 mA, and 0.5 mA' },
  ],
});
