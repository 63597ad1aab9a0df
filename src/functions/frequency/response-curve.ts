import { mapped, type Outcome } from '../../core/issue';
import { fromSi } from '../../core/units';
import { defineFunction } from '../define';
import { inBand } from '../level/band';
import { logPoints, POINTS } from '../level/points';
import { BLOCKS, RESPONSE_OF_BLOCKS, responseAt, type At } from './blocks';

type Rows = (string | number)[][];

const rowsOf = (response: (frequency: number) => At, frequencies: readonly number[]): Rows => [
  ['Hz', 'deviation %', 'phase °'],
  ...frequencies.map((frequency) => {
    const { gain, phase } = response(frequency);
    return [frequency, fromSi(gain - 1, '%'), fromSi(phase, 'deg')];
  }),
];

export const responseCurve = defineFunction({
  name: 'RESPONSE.CURVE',
  family: 'frequency span',
  summary: 'Table of a channel’s response over frequency: deviation from the reference, and phase.',
  ...RESPONSE_OF_BLOCKS,
  args: {
    low: { unit: 'Hz', symbol: 'f₁', text: 'First frequency.', above: 0, rangeWith: 'high' },
    high: { unit: 'Hz', symbol: 'f₂', text: 'Last frequency.', above: 0 },
    ...BLOCKS,
    points: POINTS,
  },
  result: { kind: 'block', text: 'A heading row, then frequency in Hz, deviation in % and phase in degrees.' },

  compute: ({ low, high, points, ...blocks }): Outcome<Rows> => {
    const response = responseAt(blocks);
    if (!response.ok) return response;
    return mapped(
      inBand(low, high, () => logPoints(low, high, points)),
      (at) => rowsOf(response.value, at),
    );
  },

  examples: [
    {
      args: [1, 1e6, 1, null, null, 1e9, 2],
      result: [
        ['Hz', 'deviation %', 'phase °'],
        [1, -29.28932, 45],
        [1e6, -5e-11, 5.72957795e-5],
      ],
      within: 1e-2,
      from: 'by hand: a pole at its corner, 1/√2 and 45°; a million times above it −(f_c/f)²/2 and f_c/f',
    },
    {
      args: [2, 8, '4; 4', null, null, 1e9, 3],
      result: [
        ['Hz', 'deviation %', 'phase °'],
        [2, -80, 126.8699],
        [4, -50, 90],
        [8, -20, 53.1301],
      ],
      within: 1e-6,
      from: 'by hand: two equal poles, 1/(1 + (4/f)²) and 2·atan(4/f)',
    },
  ],
});
