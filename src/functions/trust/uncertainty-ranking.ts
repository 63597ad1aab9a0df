import { mapped } from '../../core/issue';
import { CONTRIBUTIONS, readContributions } from './contributions';
import { rankingRows } from './ranking';
import { defineFunction } from '../define';

export const uncertaintyRanking = defineFunction({
  name: 'UNCERTAINTY.RANKING',
  family: 'trust',
  summary: 'The contributions of an uncertainty, largest first: what to improve.',
  equation: 'share = u_i²/u_c²',
  args: { contributions: CONTRIBUTIONS },
  result: {
    kind: 'block',
    text: 'Per row: name, given value in %, divisor, standard uncertainty in %, share of u_c² in %, remark.',
  },
  validity: 'As UNCERTAINTY.COMBINED. Rows that do not count (the same effect twice, a bias) stand last and say why.',
  source: {
    kind: 'standard',
    cite: 'JCGM 100:2008, Guide to the expression of uncertainty in measurement',
    locator: '5.1.2; clause not checked',
    read: 'from memory',
  },

  compute: ({ contributions }) => mapped(readContributions(contributions), rankingRows),

  examples: [
    {
      args: [
        [
          ['noise', 3, 'standard'],
          ['gain', 8, 'normal'],
          ['mass loading', -2, 'bias'],
        ],
      ],
      result: [
        ['gain', 8, 2, 4, 64, ''],
        ['noise', 3, 1, 3, 36, ''],
        ['mass loading', -2, '', '', '', 'one-sided: stated as bias'],
      ],
      within: 1e-9,
      from: 'by hand: 16/25 and 9/25',
    },
    {
      args: [
        [
          ['flatness class', 5, 1, null, 'response'],
          ['resonance rise', 4, 1, null, 'response'],
        ],
      ],
      result: [
        ['flatness class', 5, 1, 5, 100, ''],
        ['resonance rise', 4, 1, 4, 0, 'not counted: same effect as “flatness class”'],
      ],
      within: 1e-9,
      from: 'by definition: one effect counts once',
    },
  ],
});
