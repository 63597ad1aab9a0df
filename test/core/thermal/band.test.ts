import fc from 'fast-check';
import type { Curve } from '../../../src/core/curve';
import type { Outcome } from '../../../src/core/issue';
import { halfBand, thermalBand, worstDeviation } from '../../../src/core/thermal/band';
import { deviationAt } from '../../../src/core/thermal/deviation';
import { steepestSlope } from '../../../src/core/thermal/slope';
import { deviationTable } from '../../../src/core/thermal/table';
import { coefficientWindow, curveWindow } from '../../../src/core/thermal/window';

const valueOf = <T>(result: Outcome<T>): T => {
  if (!result.ok) throw new Error(`unexpected issue: ${result.issue.code}`);
  return result.value;
};
/** Curves from −60 to 200 °C with a few points between. */
const curve: fc.Arbitrary<Curve> = fc
  .tuple(
    fc.uniqueArray(fc.integer({ min: -59, max: 199 }), { minLength: 1, maxLength: 8 }),
    fc.array(fc.double({ min: -0.3, max: 0.3, noNaN: true }), { minLength: 10, maxLength: 10 }),
  )
  .map(([knots, deviations]) => {
    const x = [-60, ...knots.sort((a, b) => a - b), 200];
    return { x, y: x.map((_, i) => deviations[i]!) };
  });
const temperature = fc.double({ min: -60, max: 200, noNaN: true }).map((value) => value || 0);
const range = fc.tuple(temperature, temperature).map(([a, b]) => [Math.min(a, b), Math.max(a, b)] as const);
const coefficient = fc.double({ min: -0.001, max: 0.001, noNaN: true });

describe('a thermal band', () => {
  it('never narrows when the temperature range widens', () => {
    fc.assert(
      fc.property(curve, range, range, temperature, (given, one, other, calibration) => {
        const inner = valueOf(thermalBand(given, ...one, calibration));
        const outer = valueOf(thermalBand(given, Math.min(one[0], other[0]), Math.max(one[1], other[1]), calibration));
        return outer.low <= inner.low + 1e-12 && outer.high >= inner.high - 1e-12;
      }),
    );
  });
  it('holds every deviation between its ends, humps included', () => {
    fc.assert(
      fc.property(curve, range, temperature, fc.double({ min: 0, max: 1, noNaN: true }), (given, ends, cal, share) => {
        const band = valueOf(thermalBand(given, ...ends, cal));
        const inside = Math.min(ends[1], ends[0] + share * (ends[1] - ends[0]));
        const deviation = (1 + deviationAt(given, inside)) / (1 + deviationAt(given, cal)) - 1;
        expect(deviation).toBeGreaterThanOrEqual(band.low - 1e-12);
        expect(deviation).toBeLessThanOrEqual(band.high + 1e-12);
      }),
    );
  });
  it('is nothing at the calibration temperature alone', () => {
    fc.assert(
      fc.property(curve, temperature, (given, calibration) => {
        expect(worstDeviation(valueOf(thermalBand(given, calibration, calibration, calibration)))).toBeCloseTo(0, 12);
      }),
    );
  });
  it('is the same from a curve that is a straight line as from its coefficient', () => {
    fc.assert(
      fc.property(coefficient, range, (perKelvin, ends) => {
        const line = { x: [-60, 200], y: [perKelvin * (-60 - 23), perKelvin * (200 - 23)] };
        const ofCurve = valueOf(thermalBand(line, ...ends, 23));
        const ofCoefficient = valueOf(thermalBand({ perKelvin, sign: 'signed' }, ...ends, 23));
        expect(ofCurve.low).toBeCloseTo(ofCoefficient.low, 12);
        expect(ofCurve.high).toBeCloseTo(ofCoefficient.high, 12);
      }),
    );
  });
  it('is symmetric, and as wide either way as the signed one, when no sign is known', () => {
    fc.assert(
      fc.property(coefficient, range, (perKelvin, ends) => {
        const unsigned = valueOf(thermalBand({ perKelvin, sign: 'unsigned' }, ...ends, 23));
        const signed = valueOf(thermalBand({ perKelvin, sign: 'signed' }, ...ends, 23));
        expect(unsigned.low).toBeCloseTo(-unsigned.high, 15);
        expect(unsigned.high).toBeCloseTo(worstDeviation(signed), 15);
      }),
    );
  });
  it('leaves the half band either way after scaling to the middle, never more than the worst deviation', () => {
    fc.assert(
      fc.property(curve, range, temperature, (given, ends, calibration) => {
        const band = valueOf(thermalBand(given, ...ends, calibration));
        const middle = 1 + (band.low + band.high) / 2;
        expect((1 + band.high) / middle - 1).toBeCloseTo(halfBand(band), 12);
        expect(1 - (1 + band.low) / middle).toBeCloseTo(halfBand(band), 12);
      }),
    );
  });
  it('is not known beyond the curve, and says at which temperature', () => {
    const given = { x: [0, 50], y: [0, 0.02] };
    for (const [low, high, calibration, arg] of [
      [-1, 20, 23, 'low'],
      [10, 51, 23, 'high'],
      [10, 20, 60, 'calibrationTemperature'],
    ] as const) {
      expect(thermalBand(given, low, high, calibration)).toMatchObject({
        ok: false,
        issue: { code: 'beyond-data', arg },
      });
    }
    expect(thermalBand({ x: [], y: [] }, 0, 1, 0)).toMatchObject({ ok: false, issue: { code: 'beyond-data' } });
  });
  it('refuses a range upside down and a sensitivity that would vanish', () => {
    const given = { x: [0, 50], y: [0, -1.2] };
    expect(thermalBand(given, 30, 20, 23)).toMatchObject({ ok: false, issue: { code: 'out-of-range', arg: 'high' } });
    expect(thermalBand(given, 10, 50, 10)).toMatchObject({
      ok: false,
      issue: { code: 'out-of-range', arg: 'deviation' },
    });
    expect(thermalBand({ perKelvin: 0.02, sign: 'unsigned' }, 0, 100, 23)).toMatchObject({
      ok: false,
      issue: { code: 'out-of-range', arg: 'coefficient' },
    });
  });
  it('takes both sides of a step in the curve', () => {
    const step = { x: [0, 50, 50, 100], y: [0, 0, 0.03, 0.03] };
    expect(valueOf(thermalBand(step, 40, 50, 0))).toEqual({ low: 0, high: expect.closeTo(0.03, 12) });
    expect(deviationAt(step, 50)).toBeCloseTo(0.03, 12);
  });
});

describe('a temperature window', () => {
  const tolerance = fc.double({ min: 0.005, max: 0.2, noNaN: true });
  it('keeps the tolerance inside and has used it up at an end that is no end of the data', () => {
    fc.assert(
      fc.property(curve, tolerance, temperature, (given, limit, calibration) => {
        const window = valueOf(curveWindow(given, limit, calibration));
        const band = valueOf(thermalBand(given, window.low, window.high, calibration));
        expect(worstDeviation(band)).toBeLessThanOrEqual(limit * (1 + 1e-9));
        for (const end of [window.low, window.high]) {
          if (end === -60 || end === 200) continue;
          expect(worstDeviation(valueOf(thermalBand(given, end, end, calibration)))).toBeCloseTo(limit, 9);
        }
      }),
    );
  });
  it('never shrinks with a wider tolerance', () => {
    fc.assert(
      fc.property(curve, tolerance, temperature, (given, limit, calibration) => {
        const [narrow, wide] = [limit, 1.2 * limit].map((t) => valueOf(curveWindow(given, t, calibration)));
        return wide!.low <= narrow!.low + 1e-9 && wide!.high >= narrow!.high - 1e-9;
      }),
    );
  });
  it('of a coefficient does not reach below absolute zero', () => {
    expect(coefficientWindow(-1e-6, 0.05, 23)).toEqual({ low: -273.15, high: expect.closeTo(50023, 6) });
  });
  it('is not known when the calibration temperature lies beyond the curve', () => {
    expect(curveWindow({ x: [30, 50], y: [0, 0.1] }, 0.05, 23)).toMatchObject({
      ok: false,
      issue: { code: 'beyond-data', arg: 'calibrationTemperature' },
    });
  });
});

describe('a thermal curve', () => {
  it('is steepest where a finite difference is', () => {
    fc.assert(
      fc.property(curve, range, temperature, (given, [low, high], calibration) => {
        fc.pre(high - low > 1);
        const slope = steepestSlope(given, low, high, calibration);
        const zero = 1 + deviationAt(given, calibration);
        const band = valueOf(thermalBand(given, low, high, calibration));
        expect(band.high - band.low).toBeLessThanOrEqual(slope * (high - low) * (1 + 1e-9) + 1e-12);
        const pieces = given.x
          .slice(1)
          .map((to, i) => ({ from: Math.max(given.x[i]!, low), to: Math.min(to, high) }))
          .filter(({ from, to }) => to - from > 1e-3);
        const steepest = Math.max(
          ...pieces.map(({ from, to }) => Math.abs((deviationAt(given, to) - deviationAt(given, from)) / (to - from))),
        );
        expect(slope).toBeGreaterThanOrEqual((steepest / zero) * (1 - 1e-6) - 1e-12);
      }),
    );
  });
  it('is infinitely steep on a step', () => {
    expect(steepestSlope({ x: [0, 50, 50, 100], y: [0, 0, 0.03, 0.03] }, 40, 60, 0)).toBe(Infinity);
  });
  it('spills rising temperatures with both ends, every point between, and nothing outside', () => {
    fc.assert(
      fc.property(curve, range, temperature, (given, [low, high], calibration) => {
        const rows = valueOf(deviationTable(given, low, high, calibration, 10));
        const temperatures = rows.map(([t]) => t);
        expect(temperatures[0]).toBe(low);
        expect(temperatures[temperatures.length - 1]).toBe(high);
        temperatures.slice(1).forEach((t, i) => expect(t).toBeGreaterThan(temperatures[i]!));
        given.x.filter((x) => x >= low && x <= high).forEach((x) => expect(temperatures).toContain(x));
      }),
    );
  });
});
