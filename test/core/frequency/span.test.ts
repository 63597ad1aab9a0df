import fc from 'fast-check';
import { gain } from '../../../src/core/frequency/response';
import { usableSpan, type SpanQuery } from '../../../src/core/frequency/span';

const log = (low: number, high: number) =>
  fc.double({ min: Math.log(low), max: Math.log(high), noNaN: true }).map((value) => Math.exp(value));
const ordinary: fc.Arbitrary<SpanQuery> = fc.record({
  lowPoles: fc.array(log(0.01, 20), { maxLength: 4 }),
  resonance: log(1000, 1e5),
  qualityFactor: log(0.4, 100),
  reference: log(20, 500),
  tolerance: fc.double({ min: 0.005, max: 0.3, noNaN: true }),
});
/** Corners anywhere, even above the resonance: the response can rise, fall and rise again. */
const wild: fc.Arbitrary<SpanQuery> = fc.record({
  lowPoles: fc.array(log(1, 1e5), { maxLength: 6 }),
  resonance: log(10, 1e4),
  qualityFactor: log(0.3, 100),
  reference: log(1, 1e5),
  tolerance: fc.double({ min: 0.005, max: 0.5, noNaN: true }),
});
const ratio = (query: SpanQuery, frequency: number) => gain(query, frequency) / gain(query, query.reference);
const deviation = (query: SpanQuery, frequency: number) => Math.abs(ratio(query, frequency) - 1);

describe('usable span', () => {
  it.each([
    ['an ordinary channel', ordinary],
    ['a response with humps', wild],
  ])('of %s stays in tolerance at every one of 2000 places inside and has its edges on the tolerance', (_, queries) => {
    fc.assert(
      fc.property(queries, (query) => {
        const { low, high } = usableSpan(query)!;
        const start = Math.max(low, query.reference * 1e-6);
        let worst = 0;
        for (let i = 0; i <= 2000; i += 1)
          worst = Math.max(worst, deviation(query, start * (high / start) ** (i / 2000)));
        expect(worst).toBeLessThanOrEqual(query.tolerance * (1 + 1e-8));
        expect(deviation(query, high)).toBeCloseTo(query.tolerance, 8);
        if (low > 0) expect(deviation(query, low)).toBeCloseTo(query.tolerance, 8);
      }),
      { numRuns: 300 },
    );
  });

  it('never grows when a high-pass pole is added below the resonance', () => {
    fc.assert(
      fc.property(ordinary, log(0.01, 20), (query, corner) => {
        fc.pre(query.qualityFactor > 2 && query.reference < query.resonance / 10);
        const before = usableSpan(query)!;
        const after = usableSpan({ ...query, lowPoles: [...query.lowPoles, corner] })!;
        expect(after.low).toBeGreaterThanOrEqual(before.low * (1 - 1e-9));
      }),
    );
  });

  it('grows with the tolerance', () => {
    fc.assert(
      fc.property(wild, (query) => {
        const narrow = usableSpan(query)!;
        const wide = usableSpan({ ...query, tolerance: query.tolerance * 1.5 })!;
        expect(wide.low).toBeLessThanOrEqual(narrow.low * (1 + 1e-9));
        expect(wide.high).toBeGreaterThanOrEqual(narrow.high * (1 - 1e-9));
      }),
    );
  });

  it('scales with all frequencies', () => {
    fc.assert(
      fc.property(wild, log(0.01, 100), (query, k) => {
        const one = usableSpan(query)!;
        const scaled = usableSpan({
          ...query,
          lowPoles: query.lowPoles.map((corner) => k * corner),
          resonance: k * query.resonance,
          reference: k * query.reference,
        })!;
        expect(scaled.high / one.high / k).toBeCloseTo(1, 8);
        if (one.low > 0) expect(scaled.low / one.low / k).toBeCloseTo(1, 8);
      }),
    );
  });

  const query: SpanQuery = { lowPoles: [0.5], resonance: 28000, qualityFactor: 30, reference: 160, tolerance: 0.05 };

  it.each([
    [{ analyser: 20000, 'cable drive': 9000 }, 6000, 'response'],
    [{ analyser: 4000, 'cable drive': 9000 }, 4000, 'analyser'],
    [{ analyser: 4000, 'cable drive': 3000, 'data sheet': 3500 }, 3000, 'cable drive'],
    [{ analyser: 4000, 'data sheet': 100 }, 100, 'data sheet'],
  ] as const)('with limits %j ends at the smallest', (caps, high, cause) => {
    const span = usableSpan({ ...query, caps })!;
    expect(span.highLimitedBy).toBe(cause);
    if (cause !== 'response') expect(span.high).toBe(high);
    else expect(span.high).toBeGreaterThan(high);
  });

  it('is empty when a limit lies below its low end', () => {
    expect(usableSpan({ ...query, caps: { analyser: 1 } })).toBeNull();
  });

  it('reaches 0 Hz without a high-pass pole, and a corner of 0 Hz is none', () => {
    expect(usableSpan({ ...query, lowPoles: [] })).toMatchObject({ low: 0, lowLimitedBy: 'nothing' });
    expect(usableSpan({ ...query, lowPoles: [0] })).toMatchObject({ low: 0, lowLimitedBy: 'nothing' });
  });

  it('has a low end without any pole when the reference sits high on the resonance', () => {
    const span = usableSpan({ ...query, lowPoles: [], reference: 20000 })!;
    expect(span.low).toBeGreaterThan(0);
    expect(span.lowLimitedBy).toBe('response');
  });

  it('does not look past a hump to a place where the response is back in tolerance', () => {
    // Q = 1: gain 1 at 0 Hz and at the resonance, 1.155 between; 1.1 on the near side at x⁴ − x² + 1 = 1/1.21.
    const near = 1000 * Math.sqrt((1 + Math.sqrt(1 - 4 * (1 - 1 / 1.21))) / 2);
    const span = usableSpan({ lowPoles: [], resonance: 1000, qualityFactor: 1, reference: 1000, tolerance: 0.1 })!;
    expect(span.low).toBeCloseTo(near, 8);
  });

  it('takes a larger rise than fall where that is allowed', () => {
    const wider = usableSpan({ ...query, rise: 0.1 })!;
    expect(ratio(query, wider.high)).toBeCloseTo(1.1, 9);
    expect(ratio(query, wider.low)).toBeCloseTo(0.95, 9);
  });
});
