import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { beamRoot, beamShape, type Beam } from '../../src/core/mass/beam-modes';
import { exactFrequencyRatio, type LoadedBeam } from '../../src/core/mass/beam-with-mass';
import { clampedCircularModalMassShare, clampedCircularRoot } from '../../src/core/mass/circular-plate';
import { complex, minus, modulus, type Complex } from '../../src/core/mass/complex';
import {
  freeDrivingPoint,
  freeTransfer,
  loadedAccelerance,
  loadedDrivingPoint,
} from '../../src/core/mass/modification';
import { loadedFrequencies, modalAccelerance, type Mode } from '../../src/core/mass/modes';
import { halfBand, thermalBand } from '../../src/core/thermal/band';
import { curveWindow } from '../../src/core/thermal/window';
import { combinedUncertainty, effectiveFreedom } from '../../src/core/trust/budget';
import { coverageFactor } from '../../src/core/trust/student';

/** One run of the script for all cases; a missing python3 or scipy fails here, it does not skip. */
const run = spawnSync('python3', [join(__dirname, 'mass_thermal.py')], { encoding: 'utf8', maxBuffer: 1 << 26 });
if (run.status !== 0) {
  throw new Error(`python3 with numpy and scipy is needed for this test: ${run.error?.message ?? run.stderr}`);
}
interface Case<G, E> {
  readonly given: G;
  readonly expected: E;
}
const CASES = JSON.parse(run.stdout);
const casesOf = <G, E>(kind: string): readonly Case<G, E>[] => CASES[kind];

type Pair = readonly [number, number];
const z = ([re, im]: Pair): Complex => complex(re, im);
const expectRelative = (actual: number, expected: number, tolerance: number) =>
  expect(Math.abs(actual - expected)).toBeLessThanOrEqual(tolerance * Math.max(Math.abs(expected), 1e-12));
const expectComplex = (actual: Complex, expected: Complex, tolerance: number) =>
  expect(modulus(minus(actual, expected))).toBeLessThanOrEqual(tolerance * modulus(expected));

describe('against scipy, by other routes', () => {
  it('has enough cases', () => {
    const counts = Object.values(CASES).map((list) => (list as unknown[]).length);
    expect(counts.reduce((a, b) => a + b, 0)).toBeGreaterThanOrEqual(300);
  });

  // eigh is backward stable: 1e-9 leaves room for the condition of the lowest frequencies
  it('finds the frequencies of a chain with a mass added as scipy.linalg.eigh does on the full matrices', () => {
    for (const { given, expected } of casesOf<{ modes: Mode[]; added: number }, number[]>('loadedChain')) {
      const loaded = loadedFrequencies(given.modes, given.added);
      expect(loaded).toHaveLength(expected.length);
      loaded.forEach((frequency, i) => expectRelative(frequency, expected[i]!, 1e-9));
    }
  });

  // near a lightly damped pole the inverse loses up to 1/(2ζ) digits more
  it('finds free and loaded responses as the inverse of the dynamic stiffness does, and takes the mass off again', () => {
    interface Given {
      modes: Mode[];
      added: number;
      damping: number;
      frequency: number;
      transfer: Pair;
      crossed: Pair;
      fromMass: Pair;
    }
    type Expected = Record<'free' | 'loaded' | 'loadedTransfer' | 'loadedCrossed', Pair>;
    for (const { given, expected } of casesOf<Given, Expected>('receptance')) {
      const free = modalAccelerance(given.modes, given.damping, given.frequency);
      const [transfer, crossed, fromMass] = [z(given.transfer), z(given.crossed), z(given.fromMass)];
      const crossedWithMass = loadedAccelerance(crossed, transfer, fromMass, free, given.added);
      expectComplex(free, z(expected.free), 1e-8);
      expectComplex(loadedDrivingPoint(free, given.added), z(expected.loaded), 1e-8);
      expectComplex(freeDrivingPoint(z(expected.loaded), given.added), free, 1e-8);
      expectComplex(freeTransfer(z(expected.loadedTransfer), z(expected.loaded), given.added), transfer, 1e-8);
      const scale = modulus(crossed) + modulus(z(expected.loadedCrossed));
      expect(modulus(minus(crossedWithMass, z(expected.loadedCrossed)))).toBeLessThanOrEqual(1e-7 * scale);
    }
  });

  // both roots to 1e-14; the square doubles the relative error
  it.each(['tipMass', 'midSpanMass'])('finds the exact frequency of a beam with a mass as brentq does: %s', (kind) => {
    for (const { given, expected } of casesOf<{ beam: LoadedBeam; share: number }, number>(kind)) {
      expectRelative(exactFrequencyRatio(given.beam, given.share), expected, 1e-11);
    }
  });

  // the null vector of the 4 × 4 conditions loses about cosh(root)·1e-16
  it('finds roots and shapes of beams as determinant, null space and quadrature do', () => {
    for (const { given, expected } of casesOf<{ beam: Beam; mode: number; position: number }, number[]>('beamMode')) {
      const [root, mean, motion] = expected as [number, number, number];
      expectRelative(beamRoot(given.beam, given.mode), root, 1e-9);
      const square = beamShape(given.beam, given.mode)(given.position) ** 2;
      expect(Math.abs(square - motion ** 2 / mean)).toBeLessThanOrEqual(1e-6);
    }
  });

  // the alternating series keeps nine digits in the fifth mode
  it('finds roots and modal masses of the clamped disc as Bessel functions and quadrature do', () => {
    for (const { given, expected } of casesOf<{ mode: number; radius: number }, number[]>('circularPlate')) {
      const [root, mean, motion] = expected as [number, number, number];
      expectRelative(clampedCircularRoot(given.mode), root, 1e-9);
      const square = 1 / clampedCircularModalMassShare(given.mode, given.radius);
      expect(Math.abs(square - motion ** 2 / mean)).toBeLessThanOrEqual(1e-7 * (1 + square));
    }
  });

  interface CurveCase {
    x: number[];
    y: number[];
    low: number;
    high: number;
    calibration: number;
    tolerance: number;
  }
  // the extremes lie on points that the grid holds: only rounding is left
  it('finds thermal bands as numpy.interp on a dense grid does', () => {
    for (const { given, expected } of casesOf<CurveCase, { low: number; high: number; half: number }>('band')) {
      const band = thermalBand(given, given.low, given.high, given.calibration);
      if (!band.ok) throw new Error(band.issue.code);
      expect(Math.abs(band.value.low - expected.low)).toBeLessThanOrEqual(1e-12);
      expect(Math.abs(band.value.high - expected.high)).toBeLessThanOrEqual(1e-12);
      expect(Math.abs(halfBand(band.value) - expected.half)).toBeLessThanOrEqual(1e-12);
    }
  });

  // brentq stops at 1e-12 K; a flat piece magnifies rounding of the deviation by its slope
  it('finds temperature windows as brentq on the curve does', () => {
    for (const { given, expected } of casesOf<CurveCase, [number, number]>('window')) {
      const window = curveWindow(given, given.tolerance, given.calibration);
      if (!window.ok) throw new Error(window.issue.code);
      expect(Math.abs(window.value.low - expected[0])).toBeLessThanOrEqual(1e-8);
      expect(Math.abs(window.value.high - expected[1])).toBeLessThanOrEqual(1e-8);
    }
  });

  it('combines uncertainties and their degrees of freedom as the moments of the sum do', () => {
    interface Given {
      standards: number[];
      freedoms: number[];
    }
    for (const { given, expected } of casesOf<Given, { combined: number; freedom: number }>('freedom')) {
      const parts = given.standards.map((halfWidth, i) => ({
        name: '',
        halfWidth,
        divisor: 1,
        freedom: given.freedoms[i]!,
        isBias: false,
      }));
      expectRelative(combinedUncertainty(parts), expected.combined, 1e-12);
      expectRelative(effectiveFreedom(parts), expected.freedom, 1e-12);
    }
  });

  it('finds coverage factors as scipy.stats.t does', () => {
    for (const { given, expected } of casesOf<{ freedom: number; probability: number }, number>('coverage')) {
      expectRelative(coverageFactor(given.probability, given.freedom), expected, 1e-9);
    }
  });
});
