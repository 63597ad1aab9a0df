import { failure, outcome, type Outcome } from '../../core/issue';
import { convertNumber, convertText } from '../../core/text/read-in-unit';
import { unitMeanings } from '../../core/text/spelled-unit';
import { UNITS } from '../../core/units';
import { defineFunction, isCellError } from '../define';

export const convert = defineFunction({
  name: 'CONVERT',
  family: 'text and units',
  summary: 'Number converted from one unit to another of the same quantity; a text may carry its own unit.',
  equation: 'result = value × (from / to)',
  args: {
    value: {
      kind: 'cell',
      text: 'Number in the first unit, or a text; a unit in the text counts before the first unit.',
    },
    from: { kind: 'text', text: 'Unit of the value. Each unit decides what g, mg or lb in the other mean.' },
    to: { kind: 'text', text: 'Unit of the answer.' },
  },
  result: { unit: '1', text: 'The number, in the second unit.' },
  validity:
    '°C and °F alone are temperatures, with their offset; K converts with either kind only where both agree. A level keeps its statistic.',
  source: { kind: 'standard', cite: 'NIST SP 811', locator: 'appendix B, conversion factors', read: 'from memory' },

  compute: ({ value, from, to }): Outcome<number> => {
    const [fromMeanings, toMeanings] = [unitMeanings(from), unitMeanings(to)];
    const choices = Object.keys(UNITS);
    if (fromMeanings.length === 0) return failure({ code: 'unknown-choice', arg: 'from', given: from, choices });
    if (toMeanings.length === 0) return failure({ code: 'unknown-choice', arg: 'to', given: to, choices });
    if (value === null || value === '') return failure({ code: 'missing', arg: 'value' });
    if (isCellError(value)) return failure({ code: 'cell-error', arg: 'value', given: value.error });
    const reading =
      typeof value === 'number'
        ? convertNumber(value, fromMeanings, toMeanings, from)
        : convertText(String(value), fromMeanings, toMeanings);
    if (!reading) return failure({ code: 'wrong-unit', arg: 'to', given: to, unit: from });
    return reading.ok ? outcome(reading.value) : failure({ ...reading.problem, arg: 'value' });
  },

  examples: [
    { args: [100, 'mV/g', 'mV/(m/s²)'], result: 10.19716213, within: 1e-9, from: 'by hand: 100/9.80665' },
    { args: [10.2, 'mV/ms-2', 'mV/g'], result: 100.02783, within: 1e-12, from: 'by hand: 10.2 × 9.80665' },
    { args: [1, '(m/s²)²/Hz', 'g²/Hz'], result: 0.01039821155, within: 1e-9, from: 'by hand: 1/9.80665²' },
    {
      args: [18, 'in-lb', 'N·m'],
      result: 2.033726922,
      within: 1e-9,
      from: '18 × 4.4482216152605 N × 0.0254 m (NIST SP 811, from memory)',
    },
    {
      args: [1, 'oz', 'g'],
      result: 28.349523125,
      within: 1e-12,
      from: 'g beside a mass is gram; 1 oz = 28.349523125 g (NIST SP 811, from memory)',
    },
    { args: ['250 °F', '°F', '°C'], result: 121.1111111, within: 1e-9, from: 'by hand: (250 − 32) × 5/9' },
    {
      args: ['60 dB re 1e-6 m/s²', 'm/s²', 'g'],
      result: 1.019716213e-4,
      within: 1e-9,
      from: 'by hand: 10⁻⁶ × 10³ / 9.80665',
    },
  ],
});
