import fc from 'fast-check';
import {
  bandNoise,
  inputNoise,
  inputNoiseDensity,
  isExtrapolated,
  modelDensity,
  modelNoise,
  rootSumSquare,
  whiteNoise,
} from '../../../src/core/level/noise';

const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('noise in a band', () => {
  it('adds in squares over adjacent bands', () => {
    const density = { x: [1, 10, 100, 1000], y: [60, 15, 5, 3] };
    fc.assert(
      fc.property(positive(0.1, 5000), positive(1.01, 20), positive(1.01, 20), (low, first, second) => {
        const [cut, high] = [low * first, low * first * second];
        const parts = [bandNoise(density, low, cut), bandNoise(density, cut, high)];
        expect(rootSumSquare(parts) / bandNoise(density, low, high)).toBeCloseTo(1, 10);
      }),
    );
  });

  it('of a table drawn through the 1/f model approaches the closed form as the table is made finer', () => {
    const x = Array.from({ length: 2001 }, (_, i) => 1000 ** (i / 2000));
    const table = { x, y: x.map((f) => modelDensity(2, 50, f)) };
    expect(bandNoise(table, 1, 1000) / modelNoise(2, 50, 1, 1000)).toBeCloseTo(1, 6);
  });

  it('of an analyser is its whole noise in its whole band', () => {
    fc.assert(
      fc.property(positive(0.1, 20), positive(60, 130), positive(100, 2e5), (range, dynamicRange, rate) => {
        const whole = whiteNoise(inputNoiseDensity(range, dynamicRange, rate), rate / 2);
        expect(whole / inputNoise(range, dynamicRange)).toBeCloseTo(1, 12);
      }),
    );
  });

  it('is marked as extrapolated exactly when the band leaves the table', () => {
    const density = { x: [1, 100], y: [2, 1] };
    expect(isExtrapolated(density, 1, 100)).toBe(false);
    expect(isExtrapolated(density, 0.9, 50)).toBe(true);
    expect(isExtrapolated(density, 1, 101)).toBe(true);
    expect(isExtrapolated(density, 50, 5000, 1)).toBe(false);
  });
});
