import fc from 'fast-check';
import { modulus, reciprocal } from '../../../src/core/mass/complex';
import { frequencyShift } from '../../../src/core/mass/loading';
import { loadedFrequencies, modalAccelerance, type Mode } from '../../../src/core/mass/modes';
import { symmetricEigenvalues } from '../../../src/core/mass/symmetric-eigenvalues';

const mode: fc.Arbitrary<Mode> = fc.record({
  frequency: fc.double({ min: 1, max: 5000, noNaN: true }),
  modalMass: fc.double({ min: 0.01, max: 10, noNaN: true }),
  shape: fc.double({ min: -2, max: 2, noNaN: true }),
});
const modes = fc.array(mode, { minLength: 1, maxLength: 8 });
const mass = fc.double({ min: 0, max: 1, noNaN: true });

describe('modes with a mass', () => {
  it('never rise, and never fall below the next lower free mode', () => {
    fc.assert(
      fc.property(modes, mass, (list, added) => {
        const free = list.map(({ frequency }) => frequency).sort((a, b) => a - b);
        loadedFrequencies(list, added).forEach((loaded, i) => {
          expect(loaded).toBeLessThanOrEqual(free[i]! * (1 + 1e-9));
          if (i > 0) expect(loaded).toBeGreaterThanOrEqual(free[i - 1]! * (1 - 1e-9));
        });
      }),
    );
  });
  it('follow 1/√(1+r) when one mode stands alone', () => {
    fc.assert(
      fc.property(mode, mass, (one, added) => {
        const [loaded] = loadedFrequencies([one], added);
        const ratio = (added * one.shape ** 2) / one.modalMass;
        expect(loaded! / one.frequency - 1).toBeCloseTo(frequencyShift(ratio), 9);
      }),
    );
  });
  it('stay at rest when a free body only gets heavier', () => {
    expect(loadedFrequencies([{ frequency: 0, modalMass: 0.6, shape: 1 }], 0.1)[0]).toBeCloseTo(0, 12);
  });
  it('make poles of 1 + m·A: the loaded resonances are where the local mass is −m', () => {
    fc.assert(
      fc.property(modes, fc.double({ min: 0.001, max: 1, noNaN: true }), (list, added) => {
        const distinct = list.filter((one) => Math.abs(one.shape) > 0.1);
        fc.pre(distinct.length > 0);
        for (const loaded of loadedFrequencies(distinct, added)) {
          const isOwn = distinct.some(({ frequency }) => Math.abs(loaded / frequency - 1) < 1e-3);
          if (isOwn) continue;
          const local = reciprocal(modalAccelerance(distinct, 0, loaded));
          expect(Math.abs(local.re + added)).toBeLessThan(1e-4 * added);
        }
      }),
    );
  });
  it('answer like the whole mass far above a free body’s only mode', () => {
    const local = reciprocal(modalAccelerance([{ frequency: 0, modalMass: 0.6, shape: 1 }], 0, 123));
    expect(modulus(local)).toBeCloseTo(0.6, 12);
  });
});

describe('eigenvalues of a symmetric matrix', () => {
  it('have the trace as sum and the sum of squares of the elements as sum of squares', () => {
    const entry = fc.double({ min: -100, max: 100, noNaN: true });
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 7 }), fc.infiniteStream(entry), (size, stream) => {
        const matrix = Array.from({ length: size }, () => new Array<number>(size).fill(0));
        for (let i = 0; i < size; i++)
          for (let k = i; k < size; k++) matrix[i]![k] = matrix[k]![i] = stream.next().value as number;
        const values = symmetricEigenvalues(matrix);
        const sum = (list: number[]) => list.reduce((a, b) => a + b, 0);
        expect(sum(values)).toBeCloseTo(sum(matrix.map((row, i) => row[i]!)), 8);
        expect(sum(values.map((v) => v * v)) / (1 + sum(matrix.flat().map((v) => v * v)))).toBeCloseTo(
          sum(matrix.flat().map((v) => v * v)) / (1 + sum(matrix.flat().map((v) => v * v))),
          9,
        );
      }),
    );
  });
});
