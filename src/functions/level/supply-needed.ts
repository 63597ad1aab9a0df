import { failure, outcome } from '../../core/issue';
import { supplyNeeded as supplyFor } from '../../core/level/ceiling';
import { defineFunction } from '../define';

export const supplyNeeded = defineFunction({
  name: 'SUPPLY.NEEDED',
  family: 'level and dynamic range',
  summary: 'Supply voltage that lets an IEPE sensor swing to a peak.',
  equation: 'V_s = V₂ + V_d + m·a·S',
  args: {
    highest: { unit: 'g', symbol: 'a', text: 'Largest expected peak, unfiltered.', above: 0, statistic: 'peak' },
    sensitivity: {
      unit: 'mV/g',
      symbol: 'S',
      text: 'Largest sensitivity over the temperature range; charge: pC/g times mV/pC.',
      above: 0,
    },
    biasMin: { unit: 'V', symbol: 'V₁', text: 'Lowest bias over the temperature range.', above: 0 },
    biasMax: { unit: 'V', symbol: 'V₂', text: 'Highest bias over the temperature range.', above: 0 },
    sourceDrop: { unit: 'V', symbol: 'V_d', text: 'Voltage lost in the current source.', atLeast: 0 },
    biasFloor: { unit: 'V', symbol: 'V_f', text: 'Lowest output that still follows.', atLeast: 0 },
    margin: { unit: '1', symbol: 'm', text: 'Margin over the peak.', atLeast: 1, default: 1.5 },
  },
  result: { unit: 'V', symbol: 'V_s', text: 'Compliance voltage needed.' },
  validity: 'The downward swing depends on the sensor alone: if that is too small, no supply helps.',
  source: { kind: 'derivation', from: 'swing of BIAS.SWING solved for the supply' },

  compute: ({ highest, sensitivity, biasMin, biasMax, sourceDrop, biasFloor, margin }) => {
    const swing = margin * highest * sensitivity;
    return biasMin - biasFloor >= swing
      ? outcome(supplyFor(swing, biasMax, sourceDrop))
      : failure({ code: 'no-result', rule: 'the bias leaves too little downward swing, no supply helps' });
  },

  examples: [
    { args: [40, 100, 8.2, 12.2, 1.5, 2, 1], result: 17.7, within: 1e-6, from: 'by hand: 12.2 + 1.5 + 4' },
    { args: [40, 100, 8.2, 12.2, 1.5, 2], result: 19.7, within: 1e-6, from: 'by hand: 12.2 + 1.5 + 6' },
  ],
});
