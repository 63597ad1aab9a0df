import { cableDriveLimit } from '../../core/frequency/cable';
import { failure } from '../../core/issue';
import { fromSi } from '../../core/units';
import { defineFunction } from '../define';

export const cableLimit = defineFunction({
  name: 'CABLE.LIMIT',
  family: 'frequency span',
  summary: 'Highest frequency at which an IEPE sensor still drives its cable at the expected peak.',
  equation: 'f = (I − I_s)/(2π·C·a·S)',
  args: {
    supplyCurrent: { unit: 'mA', symbol: 'I', text: 'Constant current of the supply.', above: 0 },
    sensorCurrent: { unit: 'mA', symbol: 'I_s', text: 'Current the sensor keeps for itself.', atLeast: 0 },
    capacitance: { unit: 'pF', symbol: 'C', text: 'Capacitance of the whole cable.', above: 0 },
    highest: { unit: 'g', symbol: 'a', text: 'Largest expected peak.', above: 0, statistic: 'peak' },
    sensitivity: { unit: 'mV/g', symbol: 'S', text: 'Largest sensitivity over the temperature range.', above: 0 },
  },
  result: { unit: 'Hz', symbol: 'f', text: 'Cable drive limit.' },
  validity: 'Sine at the expected peak; the limit is a slew rate, so smaller signals reach higher.',
  source: { kind: 'derivation', from: 'i = C·du/dt, for a sine i = 2πf·C·V' },

  compute: ({ supplyCurrent, sensorCurrent, capacitance, highest, sensitivity }) =>
    supplyCurrent > sensorCurrent
      ? cableDriveLimit(supplyCurrent, sensorCurrent, capacitance, highest * sensitivity)
      : failure({
          code: 'out-of-range',
          arg: 'supplyCurrent',
          given: fromSi(supplyCurrent, 'mA'),
          unit: 'mA',
          rule: `> sensorCurrent, ${fromSi(sensorCurrent, 'mA')}`,
        }),

  examples: [
    { args: [4, 1, 3000, 50, 100], result: 31830.99, within: 1e-6, from: 'by hand: 3 mA/(2π × 3 nF × 5 V)' },
    { args: [2, 1, '30 nF', 50, 100], result: 1061.033, within: 1e-6, from: 'by hand: 1 mA/(2π × 30 nF × 5 V)' },
  ],
});
