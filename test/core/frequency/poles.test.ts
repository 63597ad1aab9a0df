import fc from 'fast-check';
import { frequencyOverCorner } from '../../../src/core/frequency/corner';
import { polesLimit } from '../../../src/core/frequency/poles';
import { rootBetween } from '../../../src/core/numerics/root';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('limit of a cascade of poles', () => {
  it('of one pole is the closed form, although rounding decides the sign at the end of the bracket', () => {
    fc.assert(
      fc.property(between(0.01, 10), between(0.001, 0.9), (corner, loss) => {
        expect(polesLimit([corner], loss) / (corner * frequencyOverCorner(loss))).toBeCloseTo(1, 9);
      }),
      { numRuns: 1000 },
    );
  });
  it('does not depend on the order of the poles, and is 0 without any', () => {
    expect(polesLimit([1, 0.2, 3], 0.05)).toBeCloseTo(polesLimit([3, 1, 0.2], 0.05), 12);
    expect(polesLimit([], 0.05)).toBe(0);
    expect(polesLimit([0], 0.05)).toBe(0);
  });
});

describe('root between two places', () => {
  it('is found for rising and falling functions, at an end too', () => {
    expect(rootBetween((x) => x * x - 2, 0, 2)).toBeCloseTo(Math.SQRT2, 15);
    expect(rootBetween((x) => 2 - x * x, 0, 2)).toBeCloseTo(Math.SQRT2, 15);
    expect(rootBetween((x) => x, 0, 5)).toBeCloseTo(0, 12);
    expect(rootBetween((x) => x - 5, 0, 5)).toBeCloseTo(5, 12);
  });
});
