import { failure, outcome, type Outcome } from '../../core/issue';
import { convertText } from '../../core/text/read-in-unit';
import { unitMeanings } from '../../core/text/spelled-unit';
import { UNITS } from '../../core/units';
import { defineFunction, isCellError } from '../define';

export const read = defineFunction({
  name: 'READ',
  family: 'text and units',
  summary: 'Number in the stated unit that a text such as "±65 g pk", "300 µg/√Hz" or "0,5 kHz" stands for.',
  equation: 'number in the stated unit = number as written × (unit as written / stated unit)',
  args: {
    text: { kind: 'cell', text: 'Cell to read. A number passes through; a text without a unit is in the stated unit.' },
    unit: { kind: 'text', text: 'Unit of the answer. It decides what g, mg or lb in the text mean; mass in gram.' },
    decimal: {
      kind: 'choice',
      choices: ['.', ','],
      optional: true,
      text: 'Decimal mark of texts such as 1,250 that are a number either way; blank: such a text is refused.',
    },
  },
  result: { unit: '1', text: 'The number, in the stated unit.' },
  validity:
    'One value. Statistic, tolerance and bound ("rms", "±5 %", "≤") are read over. Thread names, ranges and relative levels ("3 dB") are refused.',
  source: { kind: 'standard', cite: 'NIST SP 811', locator: 'appendix B, conversion factors', read: 'from memory' },

  compute: ({ text: cell, unit, decimal }): Outcome<number> => {
    const meanings = unitMeanings(unit);
    if (meanings.length === 0) {
      return failure({ code: 'unknown-choice', arg: 'unit', given: unit, choices: Object.keys(UNITS) });
    }
    if (cell === null || cell === '') return failure({ code: 'missing', arg: 'text' });
    if (isCellError(cell)) return failure({ code: 'cell-error', arg: 'text', given: cell.error });
    if (typeof cell === 'number') return outcome(cell);
    const text = String(cell);
    const reading = convertText(text, meanings, meanings, { decimal });
    if (reading?.ok) return outcome(reading.value);
    const problem = reading?.problem ?? { code: 'wrong-unit' as const, given: text, unit };
    return failure({ ...problem, arg: 'text' });
  },

  examples: [
    {
      args: ['±65 g pk', 'm/s²'],
      result: 637.43225,
      within: 1e-12,
      from: 'by hand: 65 × 9.80665 (standard gravity, exact)',
    },
    {
      args: ['0.8 mg', 'gram'],
      result: 0.0008,
      within: 1e-12,
      from: 'SI prefix: milligram, because a mass is asked for',
    },
    { args: ['0.8 mg', 'g'], result: 0.0008, within: 1e-12, from: 'SI prefix: thousandth of standard gravity' },
    { args: ['-65 °F', '°C'], result: -53.88888889, within: 1e-9, from: 'by hand: (−65 − 32) × 5/9' },
    { args: ['0.03 %/°F', '%/K'], result: 0.054, within: 1e-12, from: 'by hand: × 1.8, a difference has no offset' },
    {
      args: ['0.02 oz', 'gram'],
      result: 0.5669904625,
      within: 1e-10,
      from: '1 oz = 28.349523125 g (NIST SP 811, from memory)',
    },
    { args: ['1,250', 'Hz', ','], result: 1.25, within: 1e-12, from: 'decimal comma, as the third argument says' },
  ],
});
