import fc from 'fast-check';
import {
  allowedCoefficient,
  correctionResidual,
  deviationInDecibel,
  deviationOfDecibel,
  impliedCoefficient,
  linearDeviation,
} from '../../../src/core/thermal/coefficient';
import { describeLimit, limitVerdict } from '../../../src/core/thermal/limits';
import { touchCaution } from '../../../src/core/thermal/touch';
import {
  cornerForRamp,
  driftForOffset,
  rampError,
  rampForError,
  rampVerdict,
  zeroOffset,
} from '../../../src/core/thermal/transient';

const positive = fc.double({ min: 1e-3, max: 1e3, noNaN: true });
const temperature = fc.double({ min: -60, max: 200, noNaN: true });

describe('a temperature ramp', () => {
  it('has the corner and the rate that its error was made for', () => {
    fc.assert(
      fc.property(positive, positive, positive, (sensitivity, rate, error) => {
        expect(rampError(sensitivity, rate, cornerForRamp(sensitivity, rate, error)) / error).toBeCloseTo(1, 9);
        expect(rampError(sensitivity, rampForError(sensitivity, rate, error), rate) / error).toBeCloseTo(1, 9);
      }),
    );
  });
  it('settles at the error: a stepwise high-pass of a steady ramp', () => {
    const [sensitivity, rate, corner] = [0.5, 5 / 60, 1 / (2 * Math.PI * 0.5)];
    const step = 1e-4;
    const keep = Math.exp(-2 * Math.PI * corner * step);
    let output = 0;
    for (let i = 0; i < 50_000; i++) output = keep * (output + sensitivity * rate * step);
    expect(output / rampError(sensitivity, rate, corner)).toBeCloseTo(1, 3);
  });
  it('is judged worse the larger it is beside the lowest level', () => {
    const order = ['PASS', 'WARN', 'FAIL'];
    fc.assert(
      fc.property(positive, positive, positive, positive, (error, level, low, corner) => {
        const verdict = rampVerdict(error, level, low, corner);
        expect(order.indexOf(rampVerdict(2 * error, level, low, corner))).toBeGreaterThanOrEqual(
          order.indexOf(verdict),
        );
      }),
    );
  });
});

describe('linear drifts', () => {
  it('keep exactly the tolerance and the offset that their inverse was made for', () => {
    fc.assert(
      fc.property(positive, temperature, temperature, temperature, (limit, a, b, reference) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        fc.pre(Math.max(Math.abs(low - reference), Math.abs(high - reference)) > 1e-3);
        const perKelvin = allowedCoefficient(limit, low, high, reference);
        const ends = [low, high].map((t) => Math.abs(linearDeviation(perKelvin, t, reference)));
        expect(Math.max(...ends) / limit).toBeCloseTo(1, 9);
        expect(zeroOffset(driftForOffset(limit, low, high, reference), low, high, reference) / limit).toBeCloseTo(1, 9);
        expect(zeroOffset(-3, low, high, reference)).toBe(zeroOffset(3, low, high, reference));
      }),
    );
  });
  it('come back from the deviation at one temperature', () => {
    fc.assert(
      fc.property(positive, temperature, temperature, (perKelvin, at, reference) => {
        fc.pre(Math.abs(at - reference) > 1e-3);
        const deviation = linearDeviation(perKelvin, at, reference);
        expect(impliedCoefficient(deviation, at, reference) / perKelvin).toBeCloseTo(1, 9);
      }),
    );
  });
  it('leave the same rest for either sign of the slope', () => {
    expect(correctionResidual(-0.0015, 3)).toBe(correctionResidual(0.0015, 3));
  });
  it('come back from decibels', () => {
    fc.assert(
      fc.property(fc.double({ min: -0.9, max: 10, noNaN: true }), (deviation) => {
        expect(deviationOfDecibel(deviationInDecibel(deviation))).toBeCloseTo(deviation, 9);
      }),
    );
  });
});

describe('operating limits', () => {
  it('fail as soon as one needed temperature lies beyond a known limit, whatever else is missing', () => {
    expect(limitVerdict({ name: 'wax', max: 40 }, 15, 60)).toBe('FAIL');
    expect(limitVerdict({ name: 'wax', max: 80 }, 15, 60)).toBe('INCOMPLETE');
    expect(limitVerdict({ name: 'stud', min: -50, max: 60 }, 15, 60)).toBe('PASS');
  });
  it('name both ends when both are short, and what is missing when it is', () => {
    expect(describeLimit({ name: '', min: 0, max: 40 }, -10, 60)).toBe(
      'starts at 0 °C, 10 K short of −10 °C; ends at 40 °C, 20 K short of 60 °C',
    );
    expect(describeLimit({ name: '' }, 0, 1)).toBe('both limits missing');
    expect(describeLimit({ name: '', max: 5 }, 0, 1)).toBe('lower limit missing');
  });
});

describe('a touch caution', () => {
  it('comes for heat, for cold, for both, and always leaves the decision to local rules', () => {
    expect(touchCaution(-30, 20)).toMatch(/^Cold: down to −30 °C/);
    expect(touchCaution(-30, 80)).toMatch(/^Hot: up to 80 °C.*Cold: down to −30 °C/);
    for (const [low, high] of [
      [-30, 80],
      [10, 20],
      [10, 90],
    ] as const) {
      expect(touchCaution(low, high)).toMatch(/local rules decide\.$/);
      expect(touchCaution(low, high)).not.toMatch(/\bsafe\b/i);
    }
  });
});
