import type { Curve } from '../curve';
import { deviationAt } from './deviation';

/** Steepest change of the deviation per kelvin, either way, over low..high inside the curve. Infinite on a step. */
export const steepestSlope = (curve: Curve, low: number, high: number, calibrationTemperature: number): number => {
  const slopes = curve.x.slice(1).map((to, i) => {
    const from = curve.x[i]!;
    const isTouched = from <= high && to >= low;
    const isCrossed = from < high && to > low;
    return isCrossed || (isTouched && (low === high || from === to))
      ? Math.abs((curve.y[i + 1]! - curve.y[i]!) / (to - from))
      : 0;
  });
  return Math.max(...slopes) / (1 + deviationAt(curve, calibrationTemperature));
};
