import { pulseOvershoot, pulseProductNeeded } from '../../../src/core/frequency/pulse-resonance';

describe('resonance that a half-sine pulse needs', () => {
  it.each([
    [0.001, 100],
    [0.002, 300],
    [0.0032244716739035168, 346.09742071382726],
    [0.005, 50],
    [0.01, 1000],
    [0.03, 20],
    [0.05, 0.6],
  ])('for an error of %d at Q = %d is the last place where a dense look finds the error exceeded', (error, q) => {
    const needed = pulseProductNeeded(error, q);
    expect(Math.abs(pulseOvershoot(needed * (1 - 1e-6), q))).toBeGreaterThan(error);
    let worst = 0;
    for (let product = needed * (1 + 1e-9); product < 1.5 * needed + 5; product += 0.02)
      worst = Math.max(worst, Math.abs(pulseOvershoot(product, q)));
    expect(worst).toBeLessThanOrEqual(error * (1 + 1e-6));
  });
});

describe('peak of a half-sine pulse', () => {
  it('is followed exactly by an infinitely fast sensor', () => {
    expect(pulseOvershoot(1e5, 0.7)).toBeCloseTo(0, 4);
  });
  it('vanishes for a sensor far too slow', () => {
    expect(pulseOvershoot(1e-3, 0.7)).toBeCloseTo(-1, 2);
  });
  it('reaches 1.77 for an undamped sensor at worst, the top of the half-sine shock spectrum (handbook value from memory)', () => {
    const top = Math.max(...Array.from({ length: 400 }, (_, i) => pulseOvershoot(0.5 + i / 400, 1e6)));
    expect(1 + top).toBeCloseTo(1.77, 2);
  });
});
