import fc from 'fast-check';
import {
  combinedUncertainty,
  counted,
  effectiveFreedom,
  expandedUncertainty,
  roomLeft,
  statedBias,
  type Contribution,
} from '../../../src/core/trust/budget';
import { DISTRIBUTIONS, divisorOf } from '../../../src/core/trust/distribution';
import {
  durationForUncertainty,
  misalignmentLoss,
  statisticalUncertainty,
  strainError,
  transverseUncertainty,
} from '../../../src/core/trust/sources';
import { coverageFactor } from '../../../src/core/trust/student';

const positive = fc.double({ min: 1e-3, max: 1, noNaN: true });
const contribution: fc.Arbitrary<Contribution> = fc.record({
  name: fc.constant('part'),
  halfWidth: positive,
  divisor: fc.constantFrom(...DISTRIBUTIONS.map(divisorOf)),
  freedom: fc.oneof(fc.constant(Infinity), fc.integer({ min: 1, max: 50 })),
  isBias: fc.constant(false),
});
const budget = fc.array(contribution, { minLength: 1, maxLength: 10 });
const bias = (halfWidth: number): Contribution => ({
  name: 'bias',
  halfWidth,
  divisor: 1,
  freedom: Infinity,
  isBias: true,
});

describe('an uncertainty budget', () => {
  it('is at least its largest part, at most the plain sum, and the same in any order', () => {
    fc.assert(
      fc.property(budget, (parts) => {
        const standards = parts.map((part) => part.halfWidth / part.divisor);
        const combined = combinedUncertainty(parts);
        expect(combined).toBeGreaterThanOrEqual(Math.max(...standards) * (1 - 1e-12));
        expect(combined).toBeLessThanOrEqual(standards.reduce((a, b) => a + b, 0) * (1 + 1e-12));
        expect(combinedUncertainty([...parts].reverse())).toBeCloseTo(combined, 12);
      }),
    );
  });
  it('grows with every independent part', () => {
    fc.assert(
      fc.property(
        budget,
        contribution,
        (parts, more) => combinedUncertainty([...parts, more]) > combinedUncertainty(parts),
      ),
    );
  });
  it('counts one effect once, at its largest, even when two are equal', () => {
    fc.assert(
      fc.property(budget, positive, positive, (parts, one, other) => {
        const twice = [one, other, one].map((halfWidth) => ({ ...bias(halfWidth), isBias: false, effect: 'response' }));
        expect(counted(twice)).toHaveLength(1);
        expect(combinedUncertainty([...parts, ...twice])).toBeCloseTo(
          combinedUncertainty([...parts, { ...twice[0]!, halfWidth: Math.max(one, other), effect: undefined }]),
          12,
        );
      }),
    );
  });
  it('states a bias beside the squares, never inside them', () => {
    fc.assert(
      fc.property(budget, positive, (parts, b) => {
        const withBias = [...parts, bias(-b)];
        expect(combinedUncertainty(withBias)).toBe(combinedUncertainty(parts));
        expect(statedBias(withBias)).toBe(-b);
        expect(expandedUncertainty(withBias, 2)).toBeCloseTo(expandedUncertainty(parts, 2) + b, 12);
        expect(statedBias([...withBias, bias(b)])).toBeCloseTo(0, 12);
      }),
    );
  });
  it('just reaches the limit with the room that is left, and has none when it is spent', () => {
    fc.assert(
      fc.property(budget, fc.double({ min: 1.01, max: 3, noNaN: true }), (parts, share) => {
        const limit = share * expandedUncertainty(parts, 2);
        const room = roomLeft(parts, limit, 2)!;
        const more = { ...bias(room), isBias: false };
        expect(expandedUncertainty([...parts, more], 2) / limit).toBeCloseTo(1, 9);
        expect(roomLeft(parts, limit / share / 1.01, 2)).toBeUndefined();
      }),
    );
  });
  it('has at least the smallest freedom of a part, and at most their sum', () => {
    fc.assert(
      fc.property(budget, (parts) => {
        const freedom = effectiveFreedom(parts);
        expect(freedom).toBeGreaterThanOrEqual(Math.min(...parts.map((part) => part.freedom)) * (1 - 1e-9));
        expect(freedom).toBeLessThanOrEqual(parts.reduce((sum, part) => sum + part.freedom, 0) * (1 + 1e-9));
      }),
    );
  });
});

describe('coverage', () => {
  // JCGM 100:2008 table G.2, from memory: t_95 and t_95.45
  it.each([
    [1, 0.95, 12.71],
    [5, 0.95, 2.57],
    [20, 0.95, 2.09],
    [10, 0.9545, 2.28],
    [50, 0.9545, 2.05],
  ])('is t for ν = %i and p = %f', (freedom, probability, t) => {
    expect(coverageFactor(probability, freedom)).toBeCloseTo(t, 1);
    expect(Math.abs(coverageFactor(probability, freedom) - t)).toBeLessThanOrEqual(0.005 + 1e-9);
  });
  it('falls with the degrees of freedom and grows with the probability', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 200, noNaN: true }),
        fc.double({ min: 0.1, max: 0.99, noNaN: true }),
        (freedom, probability) => {
          expect(coverageFactor(probability, freedom * 1.5)).toBeLessThan(coverageFactor(probability, freedom));
          expect(coverageFactor(probability + 0.005, freedom)).toBeGreaterThan(coverageFactor(probability, freedom));
        },
      ),
      { numRuns: 40 },
    );
  });
  it('is tan(πp/2) for one degree of freedom, the Cauchy distribution', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 0.99, noNaN: true }), (probability) => {
        expect(coverageFactor(probability, 1) / Math.tan((Math.PI * probability) / 2)).toBeCloseTo(1, 9);
      }),
      { numRuns: 40 },
    );
  });
});

describe('contributions', () => {
  it('average down with the root of time, and need the time that was asked for', () => {
    fc.assert(
      fc.property(positive, positive, (bandwidth, uncertainty) => {
        const duration = durationForUncertainty(bandwidth, uncertainty);
        expect(statisticalUncertainty(bandwidth, duration) / uncertainty).toBeCloseTo(1, 9);
        expect(statisticalUncertainty(bandwidth, 4 * duration) / uncertainty).toBeCloseTo(0.5, 9);
      }),
    );
  });
  it('grow in proportion to transverse motion and to strain', () => {
    expect(transverseUncertainty(0.05, 2)).toBeCloseTo(2 * transverseUncertainty(0.05, 1), 12);
    expect(strainError(3, 2e-6)).toBeCloseTo(2 * strainError(3, 1e-6), 15);
  });
  it('lose with the square of a small angle', () => {
    expect(misalignmentLoss(0.02) / misalignmentLoss(0.01)).toBeCloseTo(4, 3);
  });
});
