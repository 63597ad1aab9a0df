import { VERDICTS, worstVerdict, type Verdict } from '../../core/verdict';
import { defineFunction, type Cell } from '../define';

const verdictOf = (cell: Cell): Verdict => {
  const word = typeof cell === 'string' ? cell.trim().toUpperCase() : '';
  return VERDICTS.find((verdict) => verdict === word) ?? 'INCOMPLETE';
};

export const verdictWorst = defineFunction({
  name: 'VERDICT.WORST',
  family: 'verdict',
  summary: 'The worst of several verdicts.',
  equation: 'FAIL > INCOMPLETE > WARN > PASS',
  args: {
    verdicts: {
      kind: 'block',
      repeating: true,
      text: 'Verdict cells or ranges; a blank, an error or any other word counts as INCOMPLETE.',
    },
  },
  result: { kind: 'text', text: 'PASS, WARN, FAIL or INCOMPLETE.' },
  validity: 'A known failure stays one, whatever else is missing; a missing verdict never passes.',
  source: {
    kind: 'derivation',
    from: 'order of severity FAIL > INCOMPLETE > WARN > PASS, a definition of this catalogue',
  },

  compute: ({ verdicts }) => {
    const cells = verdicts.flat(2);
    return cells.length === 0 ? 'INCOMPLETE' : worstVerdict(cells.map(verdictOf));
  },

  examples: [
    { args: [[['PASS', 'WARN', 'PASS']]], result: 'WARN', from: 'by definition of the order' },
    { args: ['PASS', null, 'FAIL'], result: 'FAIL', from: 'by definition: a known failure outranks a blank' },
    { args: [[['PASS'], [null]]], result: 'INCOMPLETE', from: 'by definition: a blank is not known' },
  ],
});
