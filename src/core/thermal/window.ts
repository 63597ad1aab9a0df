import type { Curve } from '../curve';
import { failure, outcome, type Outcome } from '../issue';
import { deviationAt } from './deviation';

/** Temperatures in °C. */
export interface TemperatureRange {
  readonly low: number;
  readonly high: number;
}

/** Absolute zero, °C: 0 K by definition of the Celsius scale (SI brochure). */
export const ABSOLUTE_ZERO = -273.15;

/** Range round the calibration temperature in which a linear deviation (1/K) keeps a tolerance (fraction). */
export const coefficientWindow = (
  perKelvin: number,
  tolerance: number,
  calibrationTemperature: number,
): TemperatureRange => {
  const reach = tolerance / Math.abs(perKelvin);
  return {
    low: Math.max(ABSOLUTE_ZERO, calibrationTemperature - reach),
    high: calibrationTemperature + reach,
  };
};

/**
 * Contiguous range round the calibration temperature in which the deviation, zero there, stays within ±tolerance. Cut at
 * the ends of the curve: beyond them nothing is known.
 */
export const curveWindow = (
  curve: Curve,
  tolerance: number,
  calibrationTemperature: number,
): Outcome<TemperatureRange> => {
  const zero = deviationAt(curve, calibrationTemperature);
  if (Number.isNaN(zero)) {
    return failure({
      code: 'beyond-data',
      arg: 'calibrationTemperature',
      given: calibrationTemperature,
      unit: '°C',
      rule: `${curve.x[0]} to ${curve.x[curve.x.length - 1]} °C`,
    });
  }
  const limits = [1 - tolerance, 1 + tolerance].map((factor) => factor * (1 + zero) - 1);
  const start = { x: calibrationTemperature, y: zero };
  const knots = curve.x.map((x, i) => ({ x, y: curve.y[i]! }));
  return outcome({
    low: firstExit(start, knots.filter((knot) => knot.x < start.x).reverse(), limits),
    high: firstExit(
      start,
      knots.filter((knot) => knot.x > start.x),
      limits,
    ),
  });
};

interface Knot {
  readonly x: number;
  readonly y: number;
}

const firstExit = (start: Knot, path: readonly Knot[], [lowest = 0, highest = 0]: readonly number[]): number => {
  let from = start;
  for (const to of path) {
    const limit = to.y > highest ? highest : to.y < lowest ? lowest : undefined;
    if (limit !== undefined) return from.x + ((limit - from.y) / (to.y - from.y)) * (to.x - from.x);
    from = to;
  }
  return from.x;
};
