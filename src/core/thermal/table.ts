import type { Curve } from '../curve';
import { mapped, type Outcome } from '../issue';
import { thermalBand } from './band';
import { deviationAt } from './deviation';

export const MOST_ROWS = 5000;

/**
 * Temperature (°C) and deviation (fraction, zero at the calibration temperature) from low to high: both ends, every
 * curve point between and every multiple of the step from the low end.
 */
export const deviationTable = (
  curve: Curve,
  low: number,
  high: number,
  calibrationTemperature: number,
  step?: number,
): Outcome<(readonly [number, number])[]> =>
  mapped(thermalBand(curve, low, high, calibrationTemperature), () => {
    const grid =
      step === undefined ? [] : Array.from({ length: Math.floor((high - low) / step) }, (_, i) => low + (i + 1) * step);
    const rows = [low, high, ...curve.x.filter((knot) => knot > low && knot < high), ...grid];
    const zero = 1 + deviationAt(curve, calibrationTemperature);
    return [...new Set(rows)]
      .filter((temperature) => temperature <= high)
      .sort((a, b) => a - b)
      .map((temperature) => [temperature, (1 + deviationAt(curve, temperature)) / zero - 1] as const);
  });
