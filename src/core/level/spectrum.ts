import type { Curve } from '../curve';

/** The first point that cannot stand on log-log axes, and why; undefined when the curve can. */
export const spectrumFault = ({ x, y }: Curve): { readonly point: number; readonly rule: string } | undefined => {
  for (let point = 0; point < x.length; point += 1) {
    if (!(x[point]! > 0)) return { point, rule: 'frequencies > 0' };
    if (!(y[point]! > 0)) return { point, rule: 'values > 0' };
    if (point > 0 && x[point]! < x[point - 1]!) return { point, rule: 'rising frequencies' };
  }
  return undefined;
};

/** Exponent of the straight log-log line through two points at different frequencies. */
const exponent = (f1: number, y1: number, f2: number, y2: number): number => Math.log(y2 / y1) / Math.log(f2 / f1);

/**
 * Area under y = y1·(f/f1)^n from f1 to f2: y1·f1/(n+1)·[(f2/f1)^(n+1) − 1].
 * Written with expm1 so that n = −1, where the area is y1·f1·ln(f2/f1), and its neighbourhood lose no digits.
 */
export const powerLawArea = (f1: number, y1: number, n: number, f2: number): number => {
  const octaves = Math.log(f2 / f1);
  const growth = (n + 1) * octaves;
  return y1 * f1 * octaves * (growth === 0 ? 1 : Math.expm1(growth) / growth);
};

/** Area under y^power between two frequencies inside the table; straight lines on log-log axes, steps allowed. */
export const tableArea = (curve: Curve, power: number, low: number, high: number): number => {
  const { x, y } = curve;
  let area = 0;
  for (let i = 1; i < x.length; i += 1) {
    const f1 = x[i - 1]!;
    const f2 = x[i]!;
    const from = Math.max(f1, low);
    const to = Math.min(f2, high);
    if (!(to > from)) continue;
    const n = exponent(f1, y[i - 1]!, f2, y[i]!);
    const start = y[i - 1]! * (from / f1) ** n;
    area += powerLawArea(from, start ** power, n * power, to);
  }
  return area;
};

/** First slope of the table, never above 0: noise rises towards low frequency or is flat there. */
const lowSlope = ({ x, y }: Curve): number => {
  for (let i = 1; i < x.length; i += 1)
    if (x[i]! > x[i - 1]!) return Math.min(0, exponent(x[i - 1]!, y[i - 1]!, x[i]!, y[i]!));
  return 0;
};

/** Area from low to high under y = y1·(f/f1)^n, low possibly 0, where n ≤ −1 makes it infinite. */
const areaBelow = (f1: number, y1: number, n: number, low: number, high: number): number => {
  if (low > 0) return powerLawArea(low, y1 * (low / f1) ** n, n, high);
  return n > -1 ? ((y1 * f1) / (n + 1)) * (high / f1) ** (n + 1) : Infinity;
};

/** Area under y^power; below the table its first slope (not above 0) goes on, above it the last value. */
export const extendedArea = (curve: Curve, power: number, low: number, high: number): number => {
  const { x, y } = curve;
  const first = x[0]!;
  const last = x[x.length - 1]!;
  let area = tableArea(curve, power, low, high);
  if (low < first) area += areaBelow(first, y[0]! ** power, lowSlope(curve) * power, low, Math.min(high, first));
  if (high > last) area += y[y.length - 1]! ** power * (high - Math.max(low, last));
  return area;
};

/** Value at one frequency by the same rules; at a step the larger of the two values. */
export const extendedValue = (curve: Curve, frequency: number): number => {
  const { x, y } = curve;
  if (frequency < x[0]!) return y[0]! * (frequency / x[0]!) ** lowSlope(curve);
  let value = -Infinity;
  for (let i = 0; i < x.length; i += 1) {
    if (x[i] === frequency) value = Math.max(value, y[i]!);
    else if (i > 0 && x[i - 1]! < frequency && frequency < x[i]!)
      return y[i - 1]! * (frequency / x[i - 1]!) ** exponent(x[i - 1]!, y[i - 1]!, x[i]!, y[i]!);
  }
  return value > 0 ? value : y[y.length - 1]!;
};

/** Exponent of a spectrum that changes by so many dB (of power) per octave. 6 dB per octave is 1.993, not 2. */
export const slopeExponent = (decibelsPerOctave: number): number => decibelsPerOctave / (10 * Math.log10(2));

/** dB of power per octave between two points of a spectrum. */
export const slopeBetween = (f1: number, p1: number, f2: number, p2: number): number =>
  exponent(f1, p1, f2, p2) * 10 * Math.log10(2);
