import fc from 'fast-check';
import {
  EDGE_SLACK,
  spanVerdict,
  temperatureLimitsVerdict,
  thermalBandVerdict,
  thermalVerdict,
  verdictAtLeast,
  verdictAtMost,
  VERDICTS,
  worstVerdict,
  type Verdict,
} from '../../src/core/verdict';

const severity = (verdict: Verdict) => VERDICTS.indexOf(verdict);
const number = fc.double({ min: -1e6, max: 1e6, noNaN: true });
const positive = fc.double({ min: 1e-3, max: 1e5, noNaN: true });

describe('a verdict on one number', () => {
  it('never gets worse as the number gets better', () => {
    fc.assert(
      fc.property(number, number, positive, positive, (value, pass, better, zone) => {
        const [worse, good] = [value, value + better].map((x) => severity(verdictAtLeast(x, pass, pass - zone)));
        expect(good).toBeLessThanOrEqual(worse!);
        const [low, high] = [value, value + better].map((x) => severity(verdictAtMost(x, pass, pass + zone)));
        expect(low).toBeLessThanOrEqual(high!);
      }),
    );
  });
  it('never gets worse as the limit gets looser', () => {
    fc.assert(
      fc.property(number, number, positive, (value, pass, looser) => {
        expect(severity(verdictAtMost(value, pass + looser))).toBeLessThanOrEqual(severity(verdictAtMost(value, pass)));
      }),
    );
  });
  it('passes on the limit itself, also when rounding has blurred it', () => {
    expect(verdictAtMost(0.1 + 0.2, 0.3)).toBe('PASS');
    expect(verdictAtLeast(0.3, 0.1 + 0.2)).toBe('PASS');
    expect(verdictAtMost(0.3001, 0.3)).toBe('FAIL');
  });
  it('is INCOMPLETE without a number or a pass limit, never a silent pass', () => {
    for (const unknown of [undefined, NaN]) {
      expect(verdictAtLeast(unknown, 1)).toBe('INCOMPLETE');
      expect(verdictAtMost(unknown, 1, 2)).toBe('INCOMPLETE');
      expect(verdictAtMost(1, unknown, 2)).toBe('INCOMPLETE');
    }
  });
  it('knows no WARN without a warn limit', () => {
    fc.assert(fc.property(number, number, (value, pass) => verdictAtLeast(value, pass) !== 'WARN'));
  });
});

describe('the worst of several verdicts', () => {
  it('does not depend on their order and is one of them', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...VERDICTS), { minLength: 1, maxLength: 6 }), (list) => {
        const worst = worstVerdict(list);
        return list.includes(worst) && worst === worstVerdict([...list].reverse());
      }),
    );
  });
  it('keeps a known failure beside something missing', () => {
    expect(worstVerdict(['INCOMPLETE', 'FAIL', 'PASS'])).toBe('FAIL');
    expect(worstVerdict(['INCOMPLETE', 'WARN'])).toBe('INCOMPLETE');
  });
});

describe('a thermal verdict', () => {
  const fine = { band: { low: -0.01, high: 0.02 }, tolerance: 0.05, needed: { min: 15, max: 35 } };
  const sensor = { min: -54, max: 121 };
  it('warns only where scaling to the middle of the band saves it', () => {
    expect(thermalBandVerdict({ low: 0, high: 0.08 }, 0.05)).toBe('WARN');
    expect(thermalBandVerdict({ low: -0.08, high: 0.08 }, 0.05)).toBe('FAIL');
    expect(thermalBandVerdict(undefined, 0.05)).toBe('INCOMPLETE');
    expect(thermalBandVerdict({ low: 0, high: 0.01 }, undefined)).toBe('INCOMPLETE');
  });
  it('never gets worse with a wider tolerance', () => {
    const deviation = fc.double({ min: 0, max: 0.3, noNaN: true });
    fc.assert(
      fc.property(deviation, deviation, deviation, (low, high, tolerance) => {
        const band = { low: -low, high };
        expect(severity(thermalBandVerdict(band, tolerance * 1.3))).toBeLessThanOrEqual(
          severity(thermalBandVerdict(band, tolerance)),
        );
      }),
    );
  });
  it('fails beyond a limit of any part, and only the sensor’s limits must be known', () => {
    expect(thermalVerdict({ ...fine, sensor })).toBe('PASS');
    expect(thermalVerdict({ ...fine, sensor, others: [{ max: 30 }] })).toBe('FAIL');
    expect(thermalVerdict({ ...fine, sensor, others: [{}, { min: 0 }] })).toBe('PASS');
    expect(thermalVerdict({ ...fine, sensor: { min: -54 } })).toBe('INCOMPLETE');
    expect(thermalVerdict({ ...fine, band: undefined, sensor: { max: 30 } })).toBe('FAIL');
  });
  it('is INCOMPLETE while a needed temperature is missing, unless the other one fails already', () => {
    expect(temperatureLimitsVerdict({ min: 15 }, sensor)).toBe('INCOMPLETE');
    expect(temperatureLimitsVerdict({ min: 150 }, sensor)).toBe('FAIL');
  });
});

describe('a span verdict', () => {
  const span = { low: 2, high: 5000 };
  const wide = { low: 1, high: 8000 };
  it('lets an edge lie on the span’s edge with a slack of one in a thousand', () => {
    expect(spanVerdict({ low: 2 * (1 - 0.9 * EDGE_SLACK), high: 5000 * (1 + 0.9 * EDGE_SLACK) }, span, wide)).toBe(
      'PASS',
    );
    expect(spanVerdict({ low: 2 * (1 - 1.1 * EDGE_SLACK), high: 5000 }, span, wide)).toBe('WARN');
    expect(spanVerdict({ low: 2, high: 8000 * (1 + 1.1 * EDGE_SLACK) }, span, wide)).toBe('FAIL');
  });
  it('never gets worse for a narrower band', () => {
    fc.assert(
      fc.property(positive, positive, fc.double({ min: 1, max: 3, noNaN: true }), (low, width, narrower) => {
        const band = { low, high: low + width };
        const inner = { low: Math.min(low * narrower, band.high), high: band.high };
        expect(severity(spanVerdict(inner, span, wide))).toBeLessThanOrEqual(severity(spanVerdict(band, span, wide)));
      }),
    );
  });
  it('fails on an empty span, and keeps a known failure beside a missing edge', () => {
    expect(spanVerdict({ low: 5, high: 100 }, 'empty', wide)).toBe('FAIL');
    expect(spanVerdict({ low: 5, high: 100 }, span, 'empty')).toBe('FAIL');
    expect(spanVerdict({ low: 0.1 }, span, wide)).toBe('FAIL');
    expect(spanVerdict({ low: 5 }, span, wide)).toBe('INCOMPLETE');
    expect(spanVerdict({ low: 5, high: 100 }, undefined, wide)).toBe('INCOMPLETE');
    expect(spanVerdict({ low: 5, high: 100 }, span, undefined)).toBe('INCOMPLETE');
  });
});
