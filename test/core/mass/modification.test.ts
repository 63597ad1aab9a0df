import fc from 'fast-check';
import { complex, modulus, minus, type Complex } from '../../../src/core/mass/complex';
import {
  exactLevelEffect,
  freeDrivingPoint,
  freeTransfer,
  loadedAccelerance,
  loadedDrivingPoint,
  massForLevelTolerance,
} from '../../../src/core/mass/modification';

const part = fc.double({ min: -100, max: 100, noNaN: true });
/** Driving points of a passive structure: the real part of F/v is not negative, so Im A ≥ 0. */
const drivingPoint = fc.tuple(part, fc.double({ min: 0.5, max: 100, noNaN: true })).map(([re, im]) => complex(re, im));
const mass = fc.double({ min: 1e-6, max: 0.1, noNaN: true });
const isClose = (a: Complex, b: Complex) => modulus(minus(a, b)) <= 1e-9 * (1 + modulus(b));

describe('a rigid mass on a structure', () => {
  it('is taken off again by the after-test correction, at its own point and at others', () => {
    fc.assert(
      fc.property(drivingPoint, part, part, mass, (point, re, im, added) => {
        const transfer = complex(re, im);
        const loadedPoint = loadedDrivingPoint(point, added);
        const loadedTransfer = loadedAccelerance(transfer, point, transfer, point, added);
        expect(isClose(freeDrivingPoint(loadedPoint, added), point)).toBe(true);
        expect(isClose(freeTransfer(loadedTransfer, loadedPoint, added), transfer)).toBe(true);
      }),
    );
  });
  it('adds up when two masses are put on one after the other', () => {
    fc.assert(
      fc.property(drivingPoint, mass, mass, (point, first, second) =>
        isClose(
          loadedDrivingPoint(loadedDrivingPoint(point, first), second),
          loadedDrivingPoint(point, first + second),
        ),
      ),
    );
  });
  it('changes nothing when it weighs nothing', () => {
    fc.assert(fc.property(drivingPoint, (point) => exactLevelEffect(point, 0) === 0));
  });
  it('raises the level below a resonance, where the structure answers like a spring', () => {
    expect(exactLevelEffect(complex(-20), 0.01)).toBeGreaterThan(0);
    expect(exactLevelEffect(complex(20), 0.01)).toBeLessThan(0);
  });
  it('keeps the tolerance up to the allowed mass and leaves it just beyond', () => {
    fc.assert(
      fc.property(drivingPoint, fc.double({ min: 0.01, max: 0.5, noNaN: true }), (point, tolerance) => {
        const allowed = massForLevelTolerance(point, tolerance);
        for (const share of [0.1, 0.5, 0.9, 1]) {
          expect(Math.abs(exactLevelEffect(point, share * allowed))).toBeLessThanOrEqual(tolerance * (1 + 1e-6));
        }
        expect(Math.abs(exactLevelEffect(point, allowed * (1 + 1e-3)))).toBeGreaterThan(tolerance * (1 - 1e-9));
      }),
    );
  });
});
