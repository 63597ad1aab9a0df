import { spanVerdict, type Span } from '../../core/verdict';
import { defineFunction, isCellError, type Cell } from '../define';

const isEmptySpan = (cell: Cell): boolean => isCellError(cell) && cell.error === '#NUM!';
const edge = (cell: Cell): number | undefined => (typeof cell === 'number' ? cell : undefined);
const spanOf = (low: Cell, high: Cell): Span =>
  isEmptySpan(low) || isEmptySpan(high) ? 'empty' : { low: edge(low), high: edge(high) };

export const verdictSpan = defineFunction({
  name: 'VERDICT.SPAN',
  family: 'verdict',
  summary: 'Verdict on a needed frequency band against the usable span and a wider one.',
  equation: 'PASS inside the span, WARN inside the wide span, else FAIL; edges with 0.1 % slack',
  args: {
    bandLow: {
      unit: 'Hz',
      text: 'Lower edge of the needed band.',
      atLeast: 0,
      forgiving: true,
      rangeWith: 'bandHigh',
    },
    bandHigh: { unit: 'Hz', text: 'Upper edge of the needed band.', atLeast: 0, forgiving: true },
    spanLow: { kind: 'cell', text: 'Low end of the usable span in Hz; #NUM! means that the span is empty.' },
    spanHigh: { kind: 'cell', text: 'High end of the usable span in Hz.' },
    wideLow: { kind: 'cell', text: 'Low end of the span at the wider tolerance, in Hz.' },
    wideHigh: { kind: 'cell', text: 'High end of the span at the wider tolerance, in Hz.' },
  },
  result: { kind: 'text', text: 'PASS, WARN, FAIL or INCOMPLETE.' },
  validity: 'An empty span fails. Any other missing or faulty input is INCOMPLETE unless an edge is already outside.',
  source: { kind: 'derivation', from: 'definition of the verdict words; the worse of the two edges counts' },

  compute: ({ bandLow, bandHigh, spanLow, spanHigh, wideLow, wideHigh }) =>
    spanVerdict({ low: bandLow, high: bandHigh }, spanOf(spanLow, spanHigh), spanOf(wideLow, wideHigh)),

  examples: [
    { args: [5, 2000, 1.6, 7350, 1.1, 10150], result: 'PASS', from: 'by definition: 1.6 ≤ 5 and 2000 ≤ 7350' },
    { args: [1.2, 2000, 1.6, 7350, 1.1, 10150], result: 'WARN', from: 'by definition: 1.2 Hz only in the wide span' },
    { args: [0.2, 2000, 1.6, 7350, 1.1, 10150], result: 'FAIL', from: 'by definition: 0.2 Hz lies outside both' },
    {
      args: [5, 2000, { error: '#NUM!' }, { error: '#NUM!' }, 4, 9000],
      result: 'FAIL',
      from: 'by definition: there is no span at the tolerance',
    },
    { args: [5, null, 1.6, 7350, 1.1, 10150], result: 'INCOMPLETE', from: 'by definition: no upper band edge' },
  ],
});
