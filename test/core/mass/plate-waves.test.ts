import fc from 'fast-check';
import {
  beamWavelength,
  countPlateModes,
  mobilityPeakFactor,
  plateModalDensity,
  plateWavelength,
} from '../../../src/core/mass/plate-waves';

const plate = fc.record({
  modulus: fc.double({ min: 1e9, max: 300e9, noNaN: true }),
  density: fc.double({ min: 500, max: 9000, noNaN: true }),
  poisson: fc.double({ min: 0, max: 0.45, noNaN: true }),
  thickness: fc.double({ min: 2e-4, max: 0.01, noNaN: true }),
});
const side = fc.double({ min: 0.1, max: 3, noNaN: true });
const frequency = fc.double({ min: 10, max: 5000, noNaN: true });

describe('bending waves', () => {
  it('are half as long at four times the frequency', () => {
    fc.assert(
      fc.property(plate, frequency, (given, f) => {
        expect(plateWavelength(given, 4 * f) / plateWavelength(given, f)).toBeCloseTo(0.5, 12);
      }),
    );
    const beam = { bendingStiffness: 3, massPerLength: 0.2 };
    expect(beamWavelength(beam, 400) / beamWavelength(beam, 100)).toBeCloseTo(0.5, 12);
  });
  it('fill a panel with as many modes as were counted, less those the edges take', () => {
    fc.assert(
      fc.property(plate, side, side, frequency, (given, length, width, f) => {
        const wave = plateWavelength(given, f);
        const area = plateModalDensity(given, length * width) * f;
        const edges = (length + width) / wave;
        const counted = countPlateModes(given, length, width, f);
        expect(counted).toBeGreaterThan(area - edges - 3 - 2 * Math.sqrt(area));
        expect(counted).toBeLessThanOrEqual(area);
      }),
    );
  });
  it('never lose a mode when the frequency or the panel grows', () => {
    fc.assert(
      fc.property(plate, side, side, frequency, (given, length, width, f) => {
        const counted = countPlateModes(given, length, width, f);
        return (
          countPlateModes(given, length, width, 1.1 * f) >= counted &&
          countPlateModes(given, 1.1 * length, width, f) >= counted
        );
      }),
    );
  });
  it('stand out less the more damped and the denser they are', () => {
    expect(mobilityPeakFactor(1000, 0.02, 0.06)).toBeCloseTo(mobilityPeakFactor(1000, 0.01, 0.06) / 2, 12);
    expect(mobilityPeakFactor(1000, 0.01, 0.12)).toBeCloseTo(mobilityPeakFactor(1000, 0.01, 0.06) / 2, 12);
  });
});
