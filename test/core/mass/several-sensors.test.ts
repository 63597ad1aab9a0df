import fc from 'fast-check';
import { massRatio } from '../../../src/core/mass/loading';
import {
  allowedCount,
  peakDrop,
  rovingSpread,
  shiftForPeakDrop,
  summedMassRatio,
} from '../../../src/core/mass/several-sensors';

const mass = fc.double({ min: 1e-4, max: 0.1, noNaN: true });
const masses = fc.array(mass, { minLength: 1, maxLength: 20 });

describe('several sensors', () => {
  it('load one point with their sum', () => {
    fc.assert(
      fc.property(masses, mass, (list, local) => {
        const sum = list.reduce((a, b) => a + b, 0);
        expect(summedMassRatio(list, local) / massRatio(sum, local)).toBeCloseTo(1, 12);
      }),
    );
  });
  it('load a mode no more than if all sat at its antinode, and not at all on nodes', () => {
    fc.assert(
      fc.property(masses, mass, (list, modal) => {
        const shapes = list.map((_, i) => Math.sin(i + 1));
        expect(summedMassRatio(list, modal, shapes)).toBeLessThanOrEqual(summedMassRatio(list, modal));
        expect(
          summedMassRatio(
            list,
            modal,
            list.map(() => 0),
          ),
        ).toBe(0);
      }),
    );
  });
  it('make the same ratio spread evenly over a beam as over its whole mass', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 40 }), mass, mass, (count, unit, member) => {
        const shapes = Array.from({ length: count }, (_, i) => Math.sin((Math.PI * (i + 0.5)) / count));
        const list = shapes.map(() => unit);
        expect(summedMassRatio(list, member / 2, shapes) / ((count * unit) / member)).toBeCloseTo(1, 9);
      }),
    );
  });
  it('fit up to the allowed count and not one more', () => {
    fc.assert(
      fc.property(mass, mass, fc.double({ min: 0.01, max: 1, noNaN: true }), (member, unit, limit) => {
        const count = allowedCount(member, limit, unit);
        expect((count * unit) / member).toBeLessThanOrEqual(limit * (1 + 1e-8));
        expect(((count + 1) * unit) / member).toBeGreaterThan(limit);
      }),
    );
  });
  it('count a quotient that is whole on paper as whole', () => {
    expect(allowedCount(0.8, 0.045, 0.003)).toBe(12);
  });
  it('spread a roving mode by about half the ratio', () => {
    expect(rovingSpread(0.01)).toBeCloseTo(0.005, 4);
  });
  it('cost a peak just the drop that the allowed shift was made for', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 0.9, noNaN: true }),
        fc.double({ min: 0.001, max: 0.1, noNaN: true }),
        (drop, damping) => {
          const shift = shiftForPeakDrop(drop, damping);
          expect(-peakDrop(shift, damping)).toBeCloseTo(drop, 9);
          expect(peakDrop(-shift, damping)).toBeCloseTo(peakDrop(shift, damping), 12);
        },
      ),
    );
  });
});
