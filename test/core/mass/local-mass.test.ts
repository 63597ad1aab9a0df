import fc from 'fast-check';
import {
  beamPointImpedance,
  frequencyForRatio,
  governingBranch,
  localMassOfImpedance,
  modalLocalMass,
  platePointImpedance,
  rigidLocalMass,
} from '../../../src/core/mass/local-mass';

const positive = fc.double({ min: 1e-3, max: 1e3, noNaN: true });
const aluminium = { modulus: 70e9, density: 2700, poisson: 0.33 };
const relative = (a: number, b: number) => Math.abs(a / b - 1);

describe('local mass', () => {
  it('of a plate grows with the square of its thickness and falls with frequency', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-4, max: 0.01, noNaN: true }), positive, (thickness, frequency) => {
        const impedance = platePointImpedance({ ...aluminium, thickness });
        expect(relative(platePointImpedance({ ...aluminium, thickness: 2 * thickness }), 4 * impedance)).toBeLessThan(
          1e-12,
        );
        const local = localMassOfImpedance(impedance, frequency);
        expect(relative(localMassOfImpedance(impedance, 2 * frequency), local / 2)).toBeLessThan(1e-12);
      }),
    );
  });
  it('of a beam falls with the root of the frequency, and to a quarter at a free end', () => {
    fc.assert(
      fc.property(positive, positive, positive, (bendingStiffness, massPerLength, frequency) => {
        const beam = { bendingStiffness, massPerLength };
        const local = (f: number) => localMassOfImpedance(beamPointImpedance(beam, f, 'interior'), f);
        expect(relative(local(4 * frequency), local(frequency) / 2)).toBeLessThan(1e-9);
        expect(
          relative(beamPointImpedance(beam, frequency, 'end'), beamPointImpedance(beam, frequency, 'interior') / 4),
        ).toBeLessThan(1e-12);
      }),
    );
  });
  it('of a rigid part is never above its mass, and equals it on the centre line', () => {
    fc.assert(
      fc.property(positive, positive, positive, (mass, inertia, offset) => {
        expect(rigidLocalMass(mass, inertia, offset)).toBeLessThanOrEqual(mass * (1 + 1e-12));
        expect(relative(rigidLocalMass(mass, inertia, 0), mass)).toBeLessThan(1e-12);
      }),
    );
  });
  it('does not depend on how a mode shape is scaled', () => {
    fc.assert(
      fc.property(positive, positive, positive, (modalMass, shape, scale) => {
        expect(
          relative(modalLocalMass(modalMass * scale ** 2, shape * scale), modalLocalMass(modalMass, shape)),
        ).toBeLessThan(1e-9);
      }),
    );
  });
  it('is infinite at a node', () => {
    expect(modalLocalMass(0.4, 0)).toBe(Infinity);
  });
  it('reaches the ratio just at the limiting frequency', () => {
    fc.assert(
      fc.property(positive, positive, positive, (impedance, added, ratio) => {
        const frequency = frequencyForRatio(impedance, added, ratio);
        expect(relative(added / localMassOfImpedance(impedance, frequency), ratio)).toBeLessThan(1e-9);
      }),
    );
  });
  it('is governed by the smallest branch, the first among equals, and by none if there is none', () => {
    const branch = (name: string, mass: number) => ({ name, mass, model: 'mass' as const });
    expect(governingBranch([branch('a', 3), branch('b', 1), branch('c', 1)])?.name).toBe('b');
    expect(governingBranch([])).toBeUndefined();
  });
});
