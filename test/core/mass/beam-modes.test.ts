import fc from 'fast-check';
import { beamAntinode, beamModalMassShare, beamRoot, BEAMS, beamShape } from '../../../src/core/mass/beam-modes';
import { exactFrequencyRatio, LOADED_BEAMS } from '../../../src/core/mass/beam-with-mass';
import { clampedCircularShape } from '../../../src/core/mass/circular-plate';
import { frequencyShift } from '../../../src/core/mass/loading';
import { memberModalMassShare } from '../../../src/core/mass/members';

const beam = fc.constantFrom(...BEAMS);
const mode = fc.integer({ min: 1, max: 20 });

/** Simpson's rule. */
const integral = (f: (x: number) => number, pieces: number): number => {
  let sum = f(0) + f(1);
  for (let i = 1; i < pieces; i++) sum += (i % 2 ? 4 : 2) * f(i / pieces);
  return sum / (3 * pieces);
};

describe('uniform beams', () => {
  // Blevins, Formulas for Natural Frequency and Mode Shape, from memory
  it.each([
    ['cantilever', [1.87510407, 4.69409113, 7.85475744]],
    ['free beam', [4.73004074, 7.8532046, 10.9956079]],
    ['clamped beam', [4.73004074, 7.8532046, 10.9956079]],
    ['clamped-pinned beam', [3.92660231, 7.06858275, 10.21017612]],
  ] as const)('have the handbook’s roots: %s', (name, roots) => {
    roots.forEach((root, i) => expect(beamRoot(name, i + 1)).toBeCloseTo(root, 6));
  });
  it('have shapes with mean square 1 in every mode, so that the modal mass is the beam’s', () => {
    fc.assert(
      fc.property(beam, mode, (name, n) => {
        const shape = beamShape(name, n);
        expect(integral((x) => shape(x) ** 2, 40 * n + 200)).toBeCloseTo(1, 6);
      }),
      { numRuns: 60 },
    );
  });
  it('stand still at a clamp and at a pin', () => {
    fc.assert(
      fc.property(mode, (n) => {
        expect(beamShape('cantilever', n)(0)).toBeCloseTo(0, 9);
        expect(beamShape('clamped beam', n)(1)).toBeCloseTo(0, 6);
        expect(beamShape('clamped-pinned beam', n)(1)).toBeCloseTo(0, 6);
      }),
    );
  });
  it('carry a quarter of their mass at a free end, in every mode', () => {
    fc.assert(
      fc.property(mode, (n) => {
        expect(beamModalMassShare('cantilever', n, 1)).toBeCloseTo(0.25, 8);
        expect(beamModalMassShare('free beam', n, 0)).toBeCloseTo(0.25, 8);
      }),
    );
  });
  it('move nowhere more than at the antinode found', () => {
    fc.assert(
      fc.property(beam, mode, fc.double({ min: 0, max: 1, noNaN: true }), (name, n, position) => {
        const most = Math.abs(beamShape(name, n)(beamAntinode(name, n)));
        return Math.abs(beamShape(name, n)(position)) <= most * (1 + 1e-9);
      }),
    );
  });
  // quadrature of the exact shapes with scipy
  it.each([
    ['clamped-pinned beam', 1, 0.581, 0.439],
    ['clamped beam', 2, 0.29, 0.439],
    ['clamped beam', 3, 0.208, 0.4371],
  ] as const)('%s, mode %i: antinode and modal mass', (name, n, position, share) => {
    expect(beamAntinode(name, n)).toBeCloseTo(position, 3);
    expect(beamModalMassShare(name, n, beamAntinode(name, n))).toBeCloseTo(share, 4);
  });
});

describe('a beam with a point mass, exactly', () => {
  it('keeps its frequency without the mass and never rises with it', () => {
    for (const name of LOADED_BEAMS) {
      expect(exactFrequencyRatio(name, 0)).toBeCloseTo(1, 12);
      fc.assert(
        fc.property(fc.double({ min: 0.001, max: 50, noNaN: true }), (share) => {
          expect(exactFrequencyRatio(name, share * 1.1)).toBeLessThan(exactFrequencyRatio(name, share));
        }),
      );
    }
  });
  it('drops a little more than 1/√(1+r) says, because the shape yields', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.005, max: 1, noNaN: true }), (share) => {
        const [tip, middle] = LOADED_BEAMS.map((name) => exactFrequencyRatio(name, share) - 1);
        return tip! < frequencyShift(4 * share) && middle! < frequencyShift(2 * share);
      }),
    );
  });
});

describe('plates', () => {
  it('carry a quarter of their mass at any antinode when simply supported', () => {
    fc.assert(
      fc.property(mode, mode, (m, n) => {
        expect(memberModalMassShare('simply supported plate', [m, n], [undefined, undefined])).toBeCloseTo(0.25, 9);
      }),
    );
  });
  it('have the mean of the square over the disc in their modal mass when circular and clamped', () => {
    for (let n = 1; n <= 5; n++) {
      const shape = clampedCircularShape(n);
      expect(integral((radius) => shape(radius) ** 2 * 2 * radius, 400)).toBeCloseTo(1, 6);
    }
  });
  it('report a node instead of an endless mass', () => {
    expect(memberModalMassShare('simply supported beam', [2, 1], [0.5, undefined])).toBe('node');
    expect(memberModalMassShare('clamped circular plate', [1, 1], [1, undefined])).toBe('node');
    expect(memberModalMassShare('clamped circular plate', [6, 1], [0, undefined])).toBe('no such mode');
  });
});
