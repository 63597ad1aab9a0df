import fc from 'fast-check';
import { between, block, describeInverses, issueOf, number as n } from '../inverse';
import { durationNeeded } from '../../../src/functions/trust/duration-needed';
import { misalignmentLoss } from '../../../src/functions/trust/misalignment-loss';
import { strainError } from '../../../src/functions/trust/strain-error';
import { uncertaintyAllowed } from '../../../src/functions/trust/uncertainty-allowed';
import { uncertaintyBias } from '../../../src/functions/trust/uncertainty-bias';
import { uncertaintyCombined } from '../../../src/functions/trust/uncertainty-combined';
import { uncertaintyCoverage } from '../../../src/functions/trust/uncertainty-coverage';
import { uncertaintyExpanded } from '../../../src/functions/trust/uncertainty-expanded';
import { uncertaintyFreedom } from '../../../src/functions/trust/uncertainty-freedom';
import { uncertaintyHalfwidth } from '../../../src/functions/trust/uncertainty-halfwidth';
import { uncertaintyRanking } from '../../../src/functions/trust/uncertainty-ranking';
import { uncertaintyStandard } from '../../../src/functions/trust/uncertainty-standard';
import { uncertaintyStatistical } from '../../../src/functions/trust/uncertainty-statistical';
import { uncertaintyTransverse } from '../../../src/functions/trust/uncertainty-transverse';
import { DISTRIBUTIONS } from '../../../src/core/trust/distribution';

describeInverses('trust', [
  ...DISTRIBUTIONS.map((distribution) => ({
    title: `UNCERTAINTY.HALFWIDTH gives UNCERTAINTY.STANDARD back, ${distribution}`,
    inputs: [[0.01, 50]] as const,
    target: ([standard]: readonly number[]) => standard!,
    reached: ([standard]: readonly number[]) =>
      n(uncertaintyStandard, [n(uncertaintyHalfwidth, [standard, distribution]), distribution]),
  })),
  {
    title: 'DURATION.NEEDED keeps UNCERTAINTY.STATISTICAL',
    inputs: [
      [0.5, 1000],
      [0.1, 20],
    ],
    target: ([, uncertainty]) => uncertainty!,
    reached: ([bandwidth, uncertainty]) =>
      n(uncertaintyStatistical, [bandwidth, n(durationNeeded, [bandwidth, uncertainty])]),
  },
  {
    title: 'UNCERTAINTY.ALLOWED brings UNCERTAINTY.EXPANDED to its limit',
    inputs: [
      [0.1, 5],
      [0.1, 5],
      [25, 60],
      [1, 3],
    ],
    target: ([, , limit]) => limit!,
    reached: ([one, other, limit, k]) => {
      const rows = [
        ['one', one!, 'standard'],
        ['other', other!, 'rectangular'],
        ['loading', -1, 'bias'],
      ];
      const room = n(uncertaintyAllowed, [rows, limit, k]);
      return n(uncertaintyExpanded, [[...rows, ['more', room, 1]], k]);
    },
  },
]);

describe('a budget in cells', () => {
  const rows = fc.array(
    fc.tuple(between(0.01, 20), fc.constantFrom(...DISTRIBUTIONS), fc.option(fc.integer({ min: 1, max: 60 }))),
    { minLength: 1, maxLength: 8 },
  );
  const table = (parts: [number, string, number | null][]) =>
    parts.map(([half, distribution, freedom], i) => [`part ${i}`, half, distribution, freedom]);

  it('has the combined uncertainty of its parts, one by one', () => {
    fc.assert(
      fc.property(rows, (parts) => {
        const squares = parts.map(([half, distribution]) => n(uncertaintyStandard, [half, distribution]) ** 2);
        const combined = Math.sqrt(squares.reduce((a, b) => a + b, 0));
        expect(n(uncertaintyCombined, [table(parts)])).toBeCloseTo(combined, 9);
        expect(n(uncertaintyExpanded, [table(parts), 3])).toBeCloseTo(3 * combined, 9);
      }),
    );
  });
  it('ranks every part, largest first, with shares that make a hundred', () => {
    fc.assert(
      fc.property(rows, (parts) => {
        const ranking = block(uncertaintyRanking, [table(parts)]);
        expect(ranking.map((row) => row[0]).sort()).toEqual(
          table(parts)
            .map(([name]) => name)
            .sort(),
        );
        const shares = ranking.map((row) => row[4] as number);
        expect([...shares].sort((a, b) => b - a)).toEqual(shares);
        expect(shares.reduce((a, b) => a + b, 0)).toBeCloseTo(100, 8);
      }),
    );
  });
  it('has infinite freedom exactly when every part has', () => {
    fc.assert(
      fc.property(rows, (parts) => {
        const isKnown = parts.every(([, , freedom]) => freedom === null);
        expect((n(uncertaintyFreedom, [table(parts)]) as unknown) === 'infinite').toBe(isKnown);
      }),
    );
  });
  it('is the same with a heading, with blank rows and with numbers as text', () => {
    const plain = [
      ['gain', 3, 'standard'],
      ['noise', 8, 'normal'],
    ];
    const dressed = [
      ['contribution', '± %', 'distribution'],
      ['gain', '3 %', 'Standard'],
      [null, null, null],
      ['noise', '8', 2],
    ];
    expect(n(uncertaintyCombined, [plain])).toBeCloseTo(5, 12);
    expect(n(uncertaintyCombined, [dressed])).toBeCloseTo(5, 12);
  });
  it('keeps a bias out of the squares and counts one effect once', () => {
    const effects = [
      ['class', 4, 1, null, 'Response'],
      ['rise', 3, 1, null, 'response '],
      ['loading', -2, 'bias'],
    ];
    expect(n(uncertaintyCombined, [effects])).toBeCloseTo(4, 12);
    expect(n(uncertaintyBias, [effects])).toBeCloseTo(-2, 12);
    expect(n(uncertaintyExpanded, [effects])).toBeCloseTo(10, 12);
  });
  it.each([
    ['a name without a value', [['gain', null, 'standard']], 'missing'],
    [
      'a value that is a word',
      [
        ['noise', 1, 1],
        ['gain', 'small', 'standard'],
      ],
      'not-a-number',
    ],
    ['a negative ± value', [['gain', -1, 'standard']], 'out-of-range'],
    ['an unknown distribution', [['gain', 1, 'round']], 'unknown-choice'],
    ['no distribution', [['gain', 1, null]], 'unknown-choice'],
    ['a divisor of zero', [['gain', 1, 0]], 'out-of-range'],
    ['no degree of freedom', [['gain', 1, 1, 0]], 'not-a-number'],
    ['an error', [['gain', { error: '#DIV/0!' }, 1]], 'cell-error'],
    ['nothing', [[null, null, null]], 'missing'],
  ])('refuses %s', (_, given, code) => {
    expect(issueOf(uncertaintyCombined, [given as never]).code).toBe(code);
  });
  it('says when the limit is already spent', () => {
    expect(issueOf(uncertaintyAllowed, [[['gain', 6, 'standard']], 10]).code).toBe('no-result');
  });
});

describe('single contributions in cells', () => {
  it('UNCERTAINTY.COVERAGE falls with the degrees of freedom towards the blank one', () => {
    fc.assert(
      fc.property(between(1, 500), (freedom) => {
        const k = n(uncertaintyCoverage, [freedom]);
        expect(k).toBeGreaterThan(n(uncertaintyCoverage, [2 * freedom]));
        expect(k).toBeGreaterThan(n(uncertaintyCoverage, [null]));
      }),
      { numRuns: 30 },
    );
  });
  it('UNCERTAINTY.TRANSVERSE and STRAIN.ERROR are proportional to their cause', () => {
    fc.assert(
      fc.property(between(0, 50), between(0, 20), (a, b) => {
        expect(n(uncertaintyTransverse, [a, 2 * b])).toBeCloseTo(2 * n(uncertaintyTransverse, [a, b]), 9);
        expect(n(strainError, [a, 2 * b])).toBeCloseTo(2 * n(strainError, [a, b]), 9);
      }),
    );
  });
  it('MISALIGNMENT.LOSS grows with the angle up to everything', () => {
    fc.assert(
      fc.property(between(0, 89), (angle) => {
        expect(n(misalignmentLoss, [angle + 1])).toBeGreaterThan(n(misalignmentLoss, [angle]));
      }),
    );
    expect(n(misalignmentLoss, [90])).toBeCloseTo(100, 9);
  });
});
