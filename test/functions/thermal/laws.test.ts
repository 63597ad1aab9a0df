import fc from 'fast-check';
import { between, block, issueOf, number as n } from '../inverse';
import { thermalBand } from '../../../src/functions/thermal/thermal-band';
import { thermalCurve } from '../../../src/functions/thermal/thermal-curve';
import { thermalDeviation } from '../../../src/functions/thermal/thermal-deviation';
import { thermalHalfband } from '../../../src/functions/thermal/thermal-halfband';
import { thermalHigh } from '../../../src/functions/thermal/thermal-high';
import { thermalLimits } from '../../../src/functions/thermal/thermal-limits';
import { thermalLow } from '../../../src/functions/thermal/thermal-low';
import { thermalSlope } from '../../../src/functions/thermal/thermal-slope';
import { thermalWindow } from '../../../src/functions/thermal/thermal-window';
import { thermalWorst } from '../../../src/functions/thermal/thermal-worst';
import { touchCaution } from '../../../src/functions/thermal/touch-caution';

const CURVE = '-60:-9; 0:-4; 25:0; 75:5; 125:9; 200:12';
const temperature = between(-60, 200);
const range = fc.tuple(temperature, temperature).map((pair) => pair.sort((a, b) => a - b));

describe('thermal bands in cells', () => {
  it('come as a row whose ends are THERMAL.LOW and THERMAL.HIGH, the larger one THERMAL.WORST', () => {
    fc.assert(
      fc.property(range, temperature, ([low, high], calibration) => {
        const args = [CURVE, low, high, calibration];
        const [[least, most]] = block(thermalBand, args) as [[number, number]];
        expect(n(thermalLow, args)).toBe(least);
        expect(n(thermalHigh, args)).toBe(most);
        expect(n(thermalWorst, args)).toBe(Math.max(Math.abs(least), Math.abs(most)));
        expect(n(thermalHalfband, args)).toBeCloseTo((100 * (most - least)) / (200 + most + least), 9);
      }),
    );
  });
  it('are the same from text, from two columns, from two rows and in degrees Fahrenheit', () => {
    const x = [-60, 0, 25, 75, 125, 200];
    const y = [-9, -4, 0, 5, 9, 12];
    fc.assert(
      fc.property(range, ([low, high]) => {
        const expected = block(thermalBand, [CURVE, low, high]);
        expect(block(thermalBand, [x.map((t, i) => [t, y[i]!]), low, high])).toEqual(expected);
        expect(block(thermalBand, [[x, y], low, high])).toEqual(expected);
        const fahrenheit = (t: number) => `${t * 1.8 + 32} °F`;
        const warm = block(thermalBand, [CURVE, fahrenheit(Math.round(low!)), fahrenheit(Math.round(high!))])[0]!;
        const cold = block(thermalBand, [CURVE, Math.round(low!), Math.round(high!)])[0]!;
        warm.forEach((value, i) => expect(value as number).toBeCloseTo(cold[i] as number, 9));
      }),
    );
  });
  it('let the curve go before the coefficient, and need one of both', () => {
    expect(block(thermalBand, [CURVE, 0, 75, 25, 0.5])).toEqual(block(thermalBand, [CURVE, 0, 75, 25]));
    expect(issueOf(thermalBand, [null, 0, 75])).toEqual({ code: 'missing', arg: 'deviation' });
    expect(issueOf(thermalWindow, [null, 5])).toEqual({ code: 'missing', arg: 'deviation' });
  });
  it.each([
    [[CURVE, -61, 20], 'low', 'beyond-data'],
    [[CURVE, 0, 201], 'high', 'beyond-data'],
    [[CURVE, 30, 60, 250], 'calibrationTemperature', 'beyond-data'],
    [[CURVE, 60, 30], 'high', 'out-of-range'],
    [[null, -300, 30, 23, 0.1], 'low', 'out-of-range'],
    [[null, -200, 300, 23, 2], 'coefficient', 'out-of-range'],
    [['0:1; x', 0, 1], 'deviation', undefined],
  ] as const)('refuse %j', (args, arg, code) => {
    const issue = issueOf(thermalBand, args as never);
    expect(issue).toMatchObject(code ? { arg, code } : { arg });
  });
  it('span the deviations that THERMAL.DEVIATION finds at any temperature inside', () => {
    fc.assert(
      fc.property(range, fc.double({ min: 0, max: 1, noNaN: true }), ([low, high], share) => {
        const at = Math.min(high!, low! + share * (high! - low!));
        const deviation = n(thermalDeviation, [CURVE, at]);
        const [[least, most]] = block(thermalBand, [CURVE, low, high]) as [[number, number]];
        expect(deviation).toBeGreaterThanOrEqual(least - 1e-9);
        expect(deviation).toBeLessThanOrEqual(most + 1e-9);
      }),
    );
  });
});

describe('thermal curves in cells', () => {
  it('THERMAL.DEVIATION from one temperature to another and back is nothing', () => {
    fc.assert(
      fc.property(temperature, temperature, (from, to) => {
        const there = n(thermalDeviation, [CURVE, to, from]) / 100;
        const back = n(thermalDeviation, [CURVE, from, to]) / 100;
        expect((1 + there) * (1 + back)).toBeCloseTo(1, 12);
      }),
    );
    expect(issueOf(thermalDeviation, [CURVE, 300])).toMatchObject({ code: 'beyond-data', arg: 'temperature' });
    expect(issueOf(thermalDeviation, [CURVE, 0, 300])).toMatchObject({ arg: 'referenceTemperature' });
  });
  it('THERMAL.CURVE spills what THERMAL.DEVIATION finds, and the band is its extremes', () => {
    fc.assert(
      fc.property(range, between(1, 40), ([low, high], step) => {
        const rows = block(thermalCurve, [CURVE, low, high, 23, step]) as [number, number][];
        rows.forEach(([t, value]) => expect(value).toBeCloseTo(n(thermalDeviation, [CURVE, t]), 9));
        const [[least, most]] = block(thermalBand, [CURVE, low, high]) as [[number, number]];
        expect(Math.min(...rows.map(([, value]) => value))).toBeCloseTo(least, 9);
        expect(Math.max(...rows.map(([, value]) => value))).toBeCloseTo(most, 9);
      }),
      { numRuns: 30 },
    );
    expect(issueOf(thermalCurve, [CURVE, 0, 100, 23, 1e-6])).toMatchObject({ code: 'out-of-range', arg: 'step' });
  });
  it('THERMAL.SLOPE never falls when the range widens', () => {
    fc.assert(
      fc.property(range, range, ([a, b], [c, d]) => {
        const wide = n(thermalSlope, [CURVE, Math.min(a!, c!), Math.max(b!, d!)]);
        expect(wide).toBeGreaterThanOrEqual(n(thermalSlope, [CURVE, a, b]) - 1e-12);
      }),
    );
  });
});

describe('temperature limits in cells', () => {
  it('THERMAL.LIMITS never turns better when the needed range widens', () => {
    const order = ['PASS', 'INCOMPLETE', 'FAIL'];
    const table = [
      ['sensor', -54, 121],
      ['wax', null, 40],
      ['cable', '-55..200 °C', null],
    ];
    fc.assert(
      fc.property(range, range, ([a, b], [c, d]) => {
        const narrow = block(thermalLimits, [a, b, table]);
        const wide = block(thermalLimits, [Math.min(a!, c!), Math.max(b!, d!), table]);
        narrow.forEach(([name, verdict], i) => {
          expect(wide[i]![0]).toBe(name);
          expect(order.indexOf(wide[i]![1] as string)).toBeGreaterThanOrEqual(order.indexOf(verdict as string));
        });
      }),
    );
  });
  it.each([
    [[[null, null, null]], 'missing'],
    [[['wax', 'warm', 40]], 'not-a-number'],
    [[['wax', { error: '#N/A' }, 40]], 'cell-error'],
  ])('THERMAL.LIMITS refuses %j', (table, code) => {
    expect(issueOf(thermalLimits, [0, 10, table as never]).code).toBe(code);
  });
  it('TOUCH.CAUTION never calls anything safe', () => {
    fc.assert(
      fc.property(range, ([low, high]) => {
        const text = String(n(touchCaution, [low, high]));
        expect(text).not.toMatch(/safe/i);
        expect(text).toMatch(/local rules decide/);
      }),
    );
  });
});
