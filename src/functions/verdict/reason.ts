import type { QuantityArg } from '../define';
import { defineFunction } from '../define';
import { reasonText } from '../../plan/sentence';
import { cellFindings, NO_TEXT } from './cell-findings';

const verdict = (what: string) =>
  ({ kind: 'cell', optional: true, text: `Verdict of ${what}; its cause may follow.` }) as const;
const number = <const U extends QuantityArg['unit']>(unit: U, text: string) =>
  ({ unit, optional: true, forgiving: true, text }) as const;
const limit = <const U extends QuantityArg['unit']>(unit: U, byDefault: number, text: string) =>
  ({ unit, default: byDefault, text }) as const;

export const reason = defineFunction({
  name: 'REASON',
  family: 'verdict',
  summary: 'One short text for a channel row: what keeps it from a PASS, worst first, and what would help.',
  equation: 'number, limit, what is allowed, for every headline that is not a PASS',
  args: {
    levelVerdict: verdict('the level'),
    signalToNoise: number('dB', 'Signal to noise.'),
    headroom: number('dB', 'Headroom.'),
    massVerdict: verdict('the mass loading'),
    massRatio: number('1', 'Mass ratio.'),
    massAllowed: number('gram', 'Heaviest sensor that passes.'),
    thermalVerdict: verdict('the thermal deviation'),
    thermalLow: number('%', 'Lowest deviation.'),
    thermalHigh: number('%', 'Highest deviation.'),
    frequencyVerdict: verdict('the frequency span'),
    spanLow: number('Hz', 'Lower end of the span.'),
    spanHigh: number('Hz', 'Upper end of the span.'),
    bandLow: { ...number('Hz', 'Lower edge of the needed band.'), rangeWith: 'bandHigh' },
    bandHigh: number('Hz', 'Upper edge of the needed band.'),
    signalToNoisePass: limit('dB', 20, 'Limit of the signal to noise.'),
    headroomPass: limit('dB', 3.5, 'Limit of the headroom.'),
    massPass: limit('1', 0.1, 'Limit of the mass ratio.'),
    tolerance: limit('%', 5, 'Thermal tolerance.'),
    missing: {
      kind: 'block',
      repeating: true,
      optional: true,
      text: 'Cells that name what is not known, as MISSING gives them; used for an INCOMPLETE row.',
    },
  },
  result: { kind: 'text', text: 'Sentences; a dash for a row that passes.' },
  validity: 'Explains verdicts, does not judge: numbers and verdicts come from the row.',
  source: { kind: 'derivation', from: 'each number put beside its limit' },

  compute: (given) => reasonText(cellFindings(given)) || NO_TEXT,

  examples: [
    {
      args: ['PASS', 48.3, 10.4, 'PASS', 0.0233, 540, 'PASS', -2.85, 0.2, 'PASS', 0.184, 200, 0.2, 50],
      result: '–',
      from: 'by definition: nothing to explain',
    },
    {
      args: ['PASS', 30, 9, 'FAIL', 0.2707, 1.269, 'PASS', -1.1, 1.6, 'PASS', 1.6, 7351, 5, 2000],
      result: 'Mass ratio 0.271, limit 0.10: at most 1.27 gram of sensor may be added here.',
      from: 'by hand: 0.2707 and 1.269 to three digits; 0.10 is the default limit',
    },
    {
      args: ['FAIL', 30, -2.28, 'PASS', 0.05, 2, 'PASS', -1, 1, 'PASS', 2, 7000, 5, 2000, 20, 6],
      result: 'Headroom −2.3 dB, limit 6 dB.',
      from: 'by hand: −2.28 to one decimal',
    },
    {
      args: ['INCOMPLETE', null, 9, 'PASS', 0.05, 2, 'PASS', -1, 1, 'PASS', 2, 7000, 5, 2000, null, null, null, null, 'Lowest level'], // prettier-ignore
      result: 'Not known: Lowest level.',
      from: 'by definition: the name that the last argument gives',
    },
  ],
});
