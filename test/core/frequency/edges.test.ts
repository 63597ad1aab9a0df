import { peakVoltageAllowed, cableDriveLimit } from '../../../src/core/frequency/cable';
import { cornerForEdge, resonanceForEdge } from '../../../src/core/frequency/edges';
import { mountedResonance, sensorResonanceNeeded } from '../../../src/core/frequency/resonance';
import { usableSpan } from '../../../src/core/frequency/span';
import { halfBand, thermalBand } from '../../../src/core/thermal/band';
import { allowedCoefficientScaled } from '../../../src/core/thermal/coefficient';

describe('least resonance for an upper band edge', () => {
  it('is √21 times the edge for +5 % of an undamped response over its static value', () => {
    const edge = { frequency: 2000, reference: 1e-3, tolerance: 0.05 };
    expect(resonanceForEdge(edge, Infinity, [])).toBeCloseTo(2000 * Math.sqrt(21), 3);
  });

  it.each([
    [30, [], 0.05],
    [10, [0.5], 0.1],
    [0.7071, [], 0.05],
    [0.6, [2, 5], 0.1],
    [50, [20], 0.03],
  ])('puts the end of the span on the edge again, Q %d, poles %j, ±%d', (qualityFactor, lowPoles, tolerance) => {
    const edge = { frequency: 3000, reference: 160, tolerance };
    const resonance = resonanceForEdge(edge, qualityFactor, lowPoles);
    const span = usableSpan({ lowPoles, resonance, qualityFactor, reference: 160, tolerance });
    expect(span!.high).toBeCloseTo(3000, 4);
  });

  it('does not exist where the poles alone have risen too far', () => {
    expect(resonanceForEdge({ frequency: 3000, reference: 160, tolerance: 0.05 }, 30, [80])).toBe(Infinity);
  });
});

describe('largest corner for a band edge', () => {
  it.each([
    [[], undefined],
    [[0.4], undefined],
    [[0.4, 0.4], { frequency: 9000, qualityFactor: 30 }],
  ] as const)('puts the start of the span on the edge again beside %j', (others, resonance) => {
    const edge = { frequency: 5, reference: 160, tolerance: 0.05 };
    const corner = cornerForEdge(edge, others, resonance);
    const span = usableSpan({
      lowPoles: [...others, corner],
      resonance: resonance?.frequency ?? 1e9,
      qualityFactor: 30,
      reference: 160,
      tolerance: 0.05,
    });
    expect(span!.low).toBeCloseTo(5, 6);
  });

  it('is near a third of the edge for −5 %', () => {
    // 0.95/√(1 − 0.9025) = 3.0424; the reference itself has lost 0.005 %.
    const corner = cornerForEdge({ frequency: 5, reference: 160, tolerance: 0.05 }, []);
    expect(5 / corner).toBeCloseTo(3.041, 3);
  });

  it('bounds a band above the reference by what rises there', () => {
    const edge = { frequency: 2000, reference: 160, tolerance: 0.05 };
    const corner = cornerForEdge(edge, []);
    const lowPoles = [corner];
    const span = usableSpan({ lowPoles, resonance: 1e9, qualityFactor: 30, reference: 160, tolerance: 0.05 });
    expect(span!.high).toBeCloseTo(2000, 4);
  });

  it('is none where the others alone lose more', () => {
    expect(cornerForEdge({ frequency: 5, reference: 160, tolerance: 0.05 }, [2])).toBe(-Infinity);
  });
});

describe('inverses beside them', () => {
  it('find the sensor’s own resonance again behind a joint, or none behind a soft one', () => {
    const mounted = mountedResonance(30000, 0.005, 1e8);
    expect(sensorResonanceNeeded(mounted, 0.005, 1e8)).toBeCloseTo(30000, 6);
    expect(sensorResonanceNeeded(9000, 0.005)).toBe(9000);
    // √(1e6/0.005)/2π = 2.25 kHz of joint alone.
    expect(sensorResonanceNeeded(3000, 0.005, 1e6)).toBe(Infinity);
  });

  it('find the peak volt that a current drives: 4 mA into 3 nF up to 31.8 kHz is 5 V', () => {
    expect(peakVoltageAllowed(4e-3, 1e-3, 3e-9, cableDriveLimit(4e-3, 1e-3, 3e-9, 5))).toBeCloseTo(5, 12);
    // By hand: 3 mA/(2π × 31.83 kHz × 3 nF).
    expect(peakVoltageAllowed(4e-3, 1e-3, 3e-9, 31831)).toBeCloseTo(5, 4);
  });

  it.each([1, -1] as const)('find the coefficient of sign %d whose half band is the tolerance', (sign) => {
    const perKelvin = sign * allowedCoefficientScaled(0.05, 15, 135, 23, sign);
    const band = thermalBand({ perKelvin, sign: 'signed' }, 15, 135, 23);
    if (!band.ok) throw new Error('no band');
    expect(halfBand(band.value)).toBeCloseTo(0.05, 12);
  });
});
