import { failure, outcome } from '../../core/issue';
import { cableCapacitanceAllowed } from '../../core/frequency/cable';
import { defineFunction } from '../define';

export const cableRunAllowed = defineFunction({
  name: 'CABLE.RUN.ALLOWED',
  family: 'frequency span',
  summary: 'Longest cable that an IEPE supply drives at the upper band edge and the expected peak.',
  equation: 'l = (I − I_s)/(2πf·C′·a·S)',
  args: {
    supplyCurrent: { unit: 'mA', symbol: 'I', text: 'Constant current of the supply.', above: 0 },
    sensorCurrent: { unit: 'mA', symbol: 'I_s', text: 'Current the sensor keeps for itself.', atLeast: 0 },
    capacitancePerMetre: { unit: 'pF/m', symbol: 'C′', text: 'Capacitance of the cable per metre.', above: 0 },
    highest: { unit: 'g', symbol: 'a', text: 'Largest expected peak.', above: 0, statistic: 'peak' },
    sensitivity: { unit: 'mV/g', symbol: 'S', text: 'Largest sensitivity over the temperature range.', above: 0 },
    high: { unit: 'Hz', symbol: 'f', text: 'Upper edge of the needed band.', above: 0 },
  },
  result: { unit: 'm', symbol: 'l', text: 'Cable length.' },
  validity: 'As CABLE.LIMIT, solved for the length.',
  source: { kind: 'derivation', from: 'i = C·du/dt, for a sine i = 2πf·C·V' },

  compute: ({ supplyCurrent, sensorCurrent, capacitancePerMetre, highest, sensitivity, high }) => {
    const capacitance = cableCapacitanceAllowed(supplyCurrent, sensorCurrent, high, highest * sensitivity);
    if (capacitance > 0) return outcome(capacitance / capacitancePerMetre);
    return failure({ code: 'no-result', rule: 'the sensor keeps the whole supply current' });
  },

  examples: [
    {
      args: [4, 1, 100, 50, 100, 10000],
      result: 95.49297,
      within: 1e-6,
      from: 'by hand: 3 mA/(2π × 10 kHz × 5 V) = 9.549297 nF at 100 pF/m',
    },
    {
      args: [2, 1, 100, 10, 100, 5000],
      result: 318.3099,
      within: 1e-6,
      from: 'by hand: 1 mA/(2π × 5 kHz × 1 V) = 31.83099 nF',
    },
  ],
});
