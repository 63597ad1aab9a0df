import type { Curve } from '../curve';

/** Deviation at a temperature inside the curve, straight between points. On a step: the value above it. NaN outside. */
export const deviationAt = (curve: Curve, temperature: number): number => {
  const { x, y } = curve;
  const above = x.findIndex((knot) => knot > temperature);
  if (above === 0 || x.length === 0) return NaN;
  if (above === -1) return x[x.length - 1] === temperature ? y[y.length - 1]! : NaN;
  const share = (temperature - x[above - 1]!) / (x[above]! - x[above - 1]!);
  return y[above - 1]! + share * (y[above]! - y[above - 1]!);
};
