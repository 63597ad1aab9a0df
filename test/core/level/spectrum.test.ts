import fc from 'fast-check';
import {
  extendedArea,
  extendedValue,
  slopeBetween,
  slopeExponent,
  spectrumFault,
  tableArea,
} from '../../../src/core/level/spectrum';

const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const table = fc.array(fc.tuple(positive(0.2, 2), positive(0.1, 10)), { minLength: 2, maxLength: 8 }).map((steps) => {
  let at = 1;
  return { x: steps.map(([step]) => (at *= 1 + step)), y: steps.map(([, y]) => y) };
});
const ends = (curve: { x: number[] }) => [curve.x[0]!, curve.x[curve.x.length - 1]!] as const;
const close = (a: number, b: number, within = 1e-9) =>
  expect(Math.abs(a - b)).toBeLessThanOrEqual(within * Math.max(Math.abs(a), Math.abs(b)));

describe('area under straight log-log lines', () => {
  it('is unchanged when a segment is split at an interior point', () => {
    fc.assert(
      fc.property(table, positive(0.05, 0.95), (curve, share) => {
        const [low, high] = ends(curve);
        const cut = low * (high / low) ** share;
        const at = curve.x.findIndex((x) => x > cut);
        const split = {
          x: [...curve.x.slice(0, at), cut, ...curve.x.slice(at)],
          y: [...curve.y.slice(0, at), extendedValue(curve, cut), ...curve.y.slice(at)],
        };
        close(tableArea(split, 1, low, high), tableArea(curve, 1, low, high));
      }),
    );
  });

  it('doubles in r.m.s. when the spectrum is four times as high', () => {
    fc.assert(
      fc.property(table, (curve) => {
        const [low, high] = ends(curve);
        const four = { x: curve.x, y: curve.y.map((y) => 4 * y) };
        close(Math.sqrt(tableArea(four, 1, low, high)), 2 * Math.sqrt(tableArea(curve, 1, low, high)));
      }),
    );
  });

  it('adds up over adjacent bands, inside the table and beyond it', () => {
    fc.assert(
      fc.property(table, positive(0.1, 1), positive(0.05, 0.95), positive(1, 10), (curve, below, share, above) => {
        const [first, last] = ends(curve);
        const [low, high] = [first * below, last * above];
        const cut = low * (high / low) ** share;
        close(extendedArea(curve, 2, low, cut) + extendedArea(curve, 2, cut, high), extendedArea(curve, 2, low, high));
      }),
    );
  });

  it('passes through 1/f without a jump', () => {
    const area = (n: number) => tableArea({ x: [10, 1000], y: [1, 100 ** n] }, 1, 10, 1000);
    close(area(-1), 10 * Math.log(100), 1e-12);
    close(area(-1 + 1e-10), area(-1), 1e-8);
    close(area(-1 - 1e-10), area(-1), 1e-8);
  });

  it('counts a step as two points at one frequency, with no area of its own', () => {
    close(tableArea({ x: [10, 20, 20, 40], y: [2, 2, 5, 5] }, 1, 10, 40), 2 * 10 + 5 * 20, 1e-12);
  });

  it('starts from 0 Hz when the density is flat there, and is infinite when it rises as 1/f', () => {
    close(extendedArea({ x: [10, 100], y: [3, 3] }, 2, 0, 100), 9 * 100, 1e-12);
    expect(extendedArea({ x: [10, 100], y: [10, 1] }, 2, 0, 100)).toBe(Infinity);
  });

  it('goes on below the table with a first slope that rises towards low frequency, else flat', () => {
    close(extendedValue({ x: [10, 100], y: [10, 1] }, 1), 100);
    close(extendedValue({ x: [10, 100], y: [1, 10] }, 1), 1);
    close(extendedValue({ x: [10, 100], y: [10, 1] }, 1e4), 1);
  });

  it('takes the larger value at a step', () => {
    expect(extendedValue({ x: [10, 20, 20, 40], y: [2, 2, 5, 5] }, 20)).toBe(5);
    expect(extendedValue({ x: [10, 20, 20, 40], y: [5, 5, 2, 2] }, 20)).toBe(5);
  });
});

describe('slope of a spectrum', () => {
  it('is the same going through its exponent', () => {
    fc.assert(
      fc.property(positive(-40, 40), positive(1, 100), positive(1.1, 10), (slope, f1, ratio) => {
        fc.pre(Math.abs(slope) > 1e-6);
        close(slopeBetween(f1, 1, f1 * ratio, ratio ** slopeExponent(slope)), slope, 1e-7);
      }),
    );
  });
});

describe('a curve that cannot stand on log-log axes', () => {
  it.each([
    [{ x: [0, 10], y: [1, 1] }, 0],
    [{ x: [1, 10], y: [1, 0] }, 1],
    [{ x: [10, 1], y: [1, 1] }, 1],
  ])('%j is refused at point %i', (curve, point) => {
    expect(spectrumFault(curve)?.point).toBe(point);
  });
  it('is any other than a rising positive one', () => {
    expect(spectrumFault({ x: [1, 2, 2], y: [1, 2, 3] })).toBeUndefined();
  });
});
