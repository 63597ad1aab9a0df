import { isCellError, defineFunction, type Cell } from '../define';
import { isAbsentText } from '../../core/text/absent';

const isMissing = (cell: Cell | undefined): boolean =>
  cell === null || cell === undefined || isCellError(cell) || (typeof cell === 'string' && isAbsentText(cell));

export const missing = defineFunction({
  name: 'MISSING',
  family: 'verdict',
  summary: 'Which of several cells are blank, errors, or texts such as “tbd”: their names, or nothing.',
  equation: 'names of the cells that hold no information',
  args: {
    names: { kind: 'text', text: 'Names of the cells, separated by semicolons.' },
    cells: { kind: 'block', repeating: true, text: 'The cells, in the order of the names.' },
  },
  result: { kind: 'text', text: 'Names joined by commas; empty when nothing is missing.' },
  validity: 'Whether a cell says anything, not whether it can be read.',
  source: { kind: 'derivation', from: 'a list compared with the cells it names, one by one' },
  compute: ({ names, cells }) => {
    const all = cells.flatMap((block) => block.flat());
    return names
      .split(';')
      .map((name) => name.trim())
      .filter((_, i) => isMissing(all[i]))
      .join(', ');
  },
  examples: [
    {
      args: ['Lowest level; Local mass', 0.1, null],
      result: 'Local mass',
      from: 'by inspection: the second cell is blank',
    },
    {
      args: ['a; b; c', [[{ error: '#N/A' }, 'tbd', 0]]],
      result: 'a, b',
      from: 'by inspection: an error, a text without a value, a zero',
    },
    { args: ['a; b', 1, 'x'], result: '', from: 'by inspection: both cells say something' },
  ],
});
