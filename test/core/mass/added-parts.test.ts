import fc from 'fast-check';
import {
  cableLengthForMass,
  cableLengthForShift,
  cableMass,
  cableStiffness,
  heightForRotaryEffect,
  rotaryEffect,
  stiffnessShift,
} from '../../../src/core/mass/added-parts';
import { inertiaForce, peakForHolding } from '../../../src/core/mass/holding';

const positive = fc.double({ min: 1e-3, max: 1e3, noNaN: true });
const ratioOf = (a: number, b: number) => expect(a / b).toBeCloseTo(1, 9);

describe('parts beside the sensor', () => {
  it('have the height, the length and the peak that their limit was made for', () => {
    fc.assert(
      fc.property(positive, positive, positive, positive, (a, b, c, d) => {
        ratioOf(rotaryEffect(a, heightForRotaryEffect(b, a)), b);
        ratioOf(cableMass(cableLengthForMass(a, b), b), a);
        ratioOf(stiffnessShift(cableStiffness(a, cableLengthForShift(a, b, c, d)), b, c), d);
        ratioOf(a / inertiaForce(b, peakForHolding(a, b, c)), c);
      }),
    );
  });
  it('pull with the root of the squares of both directions, never less than with one', () => {
    fc.assert(
      fc.property(positive, positive, positive, (mass, axial, across) => {
        const both = inertiaForce(mass, axial, across);
        expect(both).toBeGreaterThanOrEqual(Math.max(inertiaForce(mass, axial), inertiaForce(mass, across)));
        ratioOf(inertiaForce(mass, 3 * axial, 4 * axial), 5 * inertiaForce(mass, axial));
      }),
    );
  });
  it('are stiffer by eight when a cable is tied at half the length', () => {
    ratioOf(cableStiffness(2e-5, 0.025), 8 * cableStiffness(2e-5, 0.05));
  });
});
