import { touchCaution as cautionOf } from '../../core/thermal/touch';
import { defineFunction } from '../define';

export const touchCaution = defineFunction({
  name: 'TOUCH.CAUTION',
  family: 'thermal',
  summary: 'Caution for people who handle the point at these temperatures.',
  equation: 'hot from 45 °C, cold from 0 °C down',
  args: {
    low: {
      unit: '°C',
      text: 'Lowest temperature of the surface, or both as a range text.',
      atLeast: -273.15,
      rangeWith: 'high',
    },
    high: { unit: '°C', text: 'Highest temperature of the surface.', atLeast: -273.15 },
  },
  result: { kind: 'text', text: 'A caution, or a statement that temperature alone gives none.' },
  validity:
    'Planning hint, not a limit: burns depend on material and contact time. Local rules and the people responsible on site decide.',
  source: {
    kind: 'standard',
    cite: 'ISO 13732-1 (hot surfaces) and ISO 13732-3 (cold surfaces)',
    locator: 'order of the thresholds only; tables not checked',
    read: 'from memory',
  },

  compute: ({ low, high }) => cautionOf(low, high),

  examples: [
    {
      args: [15, 135],
      result:
        'Hot: up to 135 °C. Mark “let cool before handling”, state the cooling time, wear gloves; local rules decide.',
      from: 'by definition: above 45 °C',
    },
    {
      args: [15, 35],
      result: 'No touch caution from the temperature alone; local rules decide.',
      from: 'by definition: between both thresholds',
    },
  ],
});
