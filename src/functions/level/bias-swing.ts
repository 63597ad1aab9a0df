import { biasSwing as swingAboutBias } from '../../core/level/ceiling';
import { defineFunction } from '../define';

export const biasSwing = defineFunction({
  name: 'BIAS.SWING',
  family: 'level and dynamic range',
  summary: 'Peak voltage an IEPE sensor can swing about its bias.',
  equation: 'V = min(V_s − V₂ − V_d, V₁ − V_f)',
  args: {
    supply: { unit: 'V', symbol: 'V_s', text: 'Compliance voltage of the supply.', above: 0 },
    biasMin: { unit: 'V', symbol: 'V₁', text: 'Lowest bias over the temperature range.', above: 0 },
    biasMax: { unit: 'V', symbol: 'V₂', text: 'Highest bias over the temperature range.', above: 0 },
    sourceDrop: { unit: 'V', symbol: 'V_d', text: 'Voltage lost in the current source.', atLeast: 0 },
    biasFloor: { unit: 'V', symbol: 'V_f', text: 'Lowest output that still follows.', atLeast: 0 },
  },
  result: { unit: 'V', symbol: 'V', text: 'Swing, the smaller of the two ways; 0 when there is none.' },
  validity: 'Bias limits over the temperature range.',
  source: { kind: 'derivation', from: 'the output stays between floor and supply less drop' },

  compute: ({ supply, biasMin, biasMax, sourceDrop, biasFloor }) =>
    swingAboutBias(supply, biasMin, biasMax, sourceDrop, biasFloor),

  examples: [
    { args: [24, 8.2, 12.2, 1.5, 2], result: 6.2, within: 1e-6, from: 'by hand: min(10.3, 6.2)' },
    { args: [18, 8.2, 12.2, 1.5, 2], result: 4.3, within: 1e-6, from: 'by hand: min(4.3, 6.2)' },
  ],
});
