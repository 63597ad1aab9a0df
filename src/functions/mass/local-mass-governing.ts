import { failure, outcome } from '../../core/issue';
import { governingBranch } from '../../core/mass/local-mass';
import { fromSi, toSi } from '../../core/units';
import { readQuantity } from '../../core/text/quantity';
import { isCellError } from '../define';
import { defineFunction } from '../define';

export const localMassGoverning = defineFunction({
  name: 'LOCAL.MASS.GOVERNING',
  family: 'mass loading',
  summary: 'The smallest of several estimates of the local mass, with its name.',
  equation: 'm_eff = min m_eff,i',
  args: {
    branches: {
      kind: 'block',
      text: 'Two columns: name of the estimate, local mass in gram. Empty rows are passed over; a name without a mass is missing.',
    },
  },
  result: { kind: 'block', text: 'One row: local mass in gram, name of the estimate that gave it.' },
  validity:
    'Estimates of the same point, direction and frequency: a plate average beside the modes, for example. Equal ones: the first is named.',
  source: {
    kind: 'derivation',
    from: 'the smallest local mass gives the largest r = m/m_eff: the conservative estimate',
  },

  compute: ({ branches }) => {
    const rows = branches.filter((row) => row.some((cell) => cell !== null && cell !== ''));
    const read = [];
    for (const [name = null, cell = null] of rows) {
      const wrong = [name, cell].find(isCellError);
      if (wrong) return failure({ code: 'cell-error', arg: 'branches', given: wrong.error });
      if (cell === null || cell === '') return failure({ code: 'missing', arg: `branches (${String(name)})` });
      const reading = typeof cell === 'number' ? undefined : readQuantity(String(cell), 'gram');
      if (reading && !reading.ok) return failure({ ...reading.problem, arg: 'branches' });
      const mass = reading ? reading.value.si : toSi(cell as number, 'gram');
      if (!(mass > 0)) {
        return failure({
          code: 'out-of-range',
          arg: 'branches',
          given: fromSi(mass, 'gram'),
          unit: 'gram',
          rule: '> 0',
        });
      }
      read.push({ name: String(name ?? ''), mass, model: 'mass' as const });
    }
    const least = governingBranch(read);
    return least ? outcome([[fromSi(least.mass, 'gram'), least.name]]) : failure({ code: 'missing', arg: 'branches' });
  },

  examples: [
    {
      args: [
        [
          ['plate average', 20.69],
          ['mode 3', 14.2],
          ['weighed', 400],
        ],
      ],
      result: [[14.2, 'mode 3']],
      within: 1e-12,
      from: 'by comparison of the three',
    },
    {
      args: [
        [
          ['plate', '0.08 kg'],
          [null, null],
          ['frame', 300],
        ],
      ],
      result: [[80, 'plate']],
      within: 1e-12,
      from: 'by comparison, 0.08 kg being 80 gram',
    },
  ],
});
