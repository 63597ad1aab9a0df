import { failure } from '../../core/issue';
import { governingBranch } from '../../core/mass/local-mass';
import { fromSi } from '../../core/units';
import { defineFunction } from '../define';
import { readBranches } from './branch-rows';

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
    const rows = readBranches(branches, 'branches');
    if (!rows.ok) return rows;
    const least = governingBranch(rows.value);
    return least ? [[fromSi(least.mass, 'gram'), least.name]] : failure({ code: 'missing', arg: 'branches' });
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
