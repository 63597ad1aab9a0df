import { defineFunction } from '../define';

export const ceilingOffset = defineFunction({
  name: 'CEILING.OFFSET',
  family: 'level and dynamic range',
  summary: 'Upper limit left by a zero offset and its drift.',
  equation: 'a = a_max − |o| − d·ΔT',
  args: {
    ceiling: { unit: 'g', symbol: 'a_max', text: 'Upper limit without offset, peak.', above: 0, statistic: 'peak' },
    offset: { unit: 'g', symbol: 'o', text: 'Zero offset, either sign.', atLeast: -1000000.0 },
    drift: { unit: 'mg/K', symbol: 'd', text: 'Drift of the zero, either sign.', atLeast: -1000000.0, default: 0 },
    temperatureChange: {
      unit: 'K',
      symbol: 'ΔT',
      text: 'Largest distance from the temperature of the zero.',
      atLeast: 0,
      default: 0,
    },
  },
  result: { unit: 'g', symbol: 'a', text: 'Peak that still fits; 0 when the offset takes it all.' },
  validity: 'For static response: bridge and capacitive types.',
  source: { kind: 'derivation', from: 'offset and vibration share the range' },

  compute: ({ ceiling, offset, drift, temperatureChange }) =>
    Math.max(0, ceiling - Math.abs(offset) - Math.abs(drift) * temperatureChange),

  examples: [
    { args: [5, 1], result: 4, within: 1e-6, from: 'by hand: gravity along the axis takes 1 g of 5' },
    { args: [50, -2, 15, 40], result: 47.4, within: 1e-6, from: 'by hand: 50 − 2 − 0.015 × 40' },
  ],
});
