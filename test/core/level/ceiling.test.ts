import fc from 'fast-check';
import { biasSwing, CEILING_CAUSES, supplyNeeded, upperLimit } from '../../../src/core/level/ceiling';
import { headroom } from '../../../src/core/level/margin';

const level = fc.double({ min: 1e-3, max: 1e6, noNaN: true });

describe('upper limit of a chain', () => {
  it('is the smallest term, and every named cause has that value', () => {
    fc.assert(
      fc.property(fc.tuple(level, level, level, level), (values) => {
        const terms = Object.fromEntries(CEILING_CAUSES.map((cause, i) => [cause, values[i]]));
        const limit = upperLimit(terms)!;
        expect(limit.value).toBe(Math.min(...values));
        for (const cause of [limit.limiting, ...limit.alsoLimiting])
          expect(terms[cause]! / limit.value).toBeCloseTo(1, 8);
      }),
    );
  });

  it('names terms that rounding alone keeps apart as equal', () => {
    expect(upperLimit({ 'input range': 0.1 + 0.2, 'amplifier output': 0.3 })).toMatchObject({
      limiting: 'input range',
      alsoLimiting: ['amplifier output'],
    });
  });

  it('does not exist without a term', () => {
    expect(upperLimit({})).toBeUndefined();
  });

  it('leaves headroom unchanged when sensitivity and range grow together', () => {
    fc.assert(
      fc.property(level, level, level, level, (range, sensitivity, peak, factor) => {
        const at = (k: number) => headroom(peak, upperLimit({ 'input range': (k * range) / (k * sensitivity) })!.value);
        expect(at(factor)).toBeCloseTo(at(1), 9);
      }),
    );
  });
});

describe('swing about the bias', () => {
  it('comes back from the supply that it needs', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 5, noNaN: true }), (swing) => {
        expect(biasSwing(supplyNeeded(swing, 12, 1.5), 8, 12, 1.5, 2)).toBeCloseTo(swing, 12);
      }),
    );
  });
  it('is nothing, never negative, when the supply is below the bias', () => {
    expect(biasSwing(12, 8, 12, 1.5, 2)).toBe(0);
  });
});
