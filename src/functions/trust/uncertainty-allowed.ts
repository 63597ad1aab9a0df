import { failure } from '../../core/issue';
import { roomLeft } from '../../core/trust/budget';
import { CONTRIBUTIONS, readContributions } from './contributions';
import { defineFunction } from '../define';

export const uncertaintyAllowed = defineFunction({
  name: 'UNCERTAINTY.ALLOWED',
  family: 'trust',
  summary: 'Standard uncertainty that one more contribution may have within a limit of the expanded uncertainty.',
  equation: 'u = √(((U − |b|)/k)² − u_c²)',
  args: {
    contributions: CONTRIBUTIONS,
    limit: { unit: '%', symbol: 'U', text: 'Largest expanded uncertainty.', above: 0 },
    coverageFactor: {
      unit: '1',
      symbol: 'k',
      text: 'Coverage factor; 2 is about 95 % if the effective degrees of freedom exceed 30.',
      above: 0,
      atMost: 10,
      default: 2,
    },
  },
  result: { unit: '%', symbol: 'u', text: 'Standard uncertainty left over.' },
  validity: 'As UNCERTAINTY.EXPANDED, whose inverse it is. No result: the limit is already spent.',
  source: {
    kind: 'standard',
    cite: 'JCGM 100:2008, Guide to the expression of uncertainty in measurement',
    locator: '5.1.2 and 6.2.1; clause not checked',
    read: 'from memory',
  },

  compute: ({ contributions, limit, coverageFactor }) => {
    const rows = readContributions(contributions);
    if (!rows.ok) return rows;
    return (
      roomLeft(rows.value, limit, coverageFactor) ?? failure({ code: 'no-result', rule: 'the limit is already spent' })
    );
  },

  examples: [
    { args: [[['gain', 3, 'standard']], 10], result: 4, within: 1e-12, from: 'by hand: √(5² − 3²)' },
    {
      args: [
        [
          ['gain', 12, 'standard'],
          ['drift', 1, 'bias'],
        ],
        40,
        3,
      ],
      result: 5,
      within: 1e-12,
      from: 'by hand: √(13² − 12²) with (40 − 1)/3 = 13',
    },
  ],
});
