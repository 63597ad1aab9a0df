import type { Curve } from '../curve';
import { failure, outcome, type Outcome } from '../issue';
import { deviationAt } from './deviation';

/** Smallest and largest relative deviation of the sensitivity over a temperature range, as fractions of 1. */
export interface Band {
  readonly low: number;
  readonly high: number;
}

/** Coefficient in 1/K. Unsigned: a data sheet gave only a size, so the band is taken both ways. */
export interface Coefficient {
  readonly perKelvin: number;
  readonly sign: 'signed' | 'unsigned';
}
export type ThermalResponse = Curve | Coefficient;

export const isCoefficient = (response: ThermalResponse): response is Coefficient => 'perKelvin' in response;

/**
 * Deviation band over low..high (°C), zero at the calibration temperature. A curve is straight between its points, each
 * of which inside the range counts, and is never continued beyond its ends: there the answer is a beyond-data issue
 * whose `arg` is `low`, `high` or `calibrationTemperature`.
 */
export const thermalBand = (
  response: ThermalResponse,
  low: number,
  high: number,
  calibrationTemperature: number,
): Outcome<Band> => {
  if (high < low) {
    return failure({
      code: 'out-of-range',
      arg: 'high',
      given: high,
      unit: '°C',
      rule: `≥ ${low}`,
    });
  }
  if (isCoefficient(response)) {
    return possible(coefficientBand(response, low, high, calibrationTemperature), 'coefficient');
  }

  const limits = { low, high, calibrationTemperature };
  const first = response.x[0] ?? Infinity;
  const last = response.x[response.x.length - 1] ?? -Infinity;
  for (const arg of ['low', 'high', 'calibrationTemperature'] as const) {
    if (!(limits[arg] >= first && limits[arg] <= last)) {
      const rule = first <= last ? `${first} to ${last} °C` : 'at least one point';
      return failure({ code: 'beyond-data', arg, given: limits[arg], unit: '°C', rule });
    }
  }
  const zero = deviationAt(response, calibrationTemperature);
  const knots = response.y.filter((_, i) => response.x[i]! >= low && response.x[i]! <= high);
  const relative = [deviationAt(response, low), deviationAt(response, high), ...knots].map(
    (deviation) => (1 + deviation) / (1 + zero) - 1,
  );
  const lowest = Math.min(zero, ...knots);
  if (lowest <= -1) return possible({ low: lowest, high: lowest }, 'deviation');
  return possible({ low: Math.min(...relative), high: Math.max(...relative) }, 'deviation');
};

/** A sensitivity cannot fall to nothing or change its sign. */
const possible = (band: Band, arg: string): Outcome<Band> =>
  band.low > -1
    ? outcome(band)
    : failure({ code: 'out-of-range', arg, given: band.low * 100, unit: '%', rule: '> -100' });

const coefficientBand = (coefficient: Coefficient, low: number, high: number, calibrationTemperature: number): Band => {
  const ends = [low, high].map((temperature) => coefficient.perKelvin * (temperature - calibrationTemperature));
  if (coefficient.sign === 'signed') return { low: Math.min(...ends), high: Math.max(...ends) };
  const largest = Math.max(...ends.map(Math.abs));
  return { low: -largest, high: largest };
};

/** Largest deviation either way: what an uncorrected reading can be wrong by. */
export const worstDeviation = (band: Band): number => Math.max(Math.abs(band.low), Math.abs(band.high));

/** What remains either way after scaling to the middle of the band: (high−low)/(2+high+low). */
export const halfBand = (band: Band): number => (band.high - band.low) / (2 + band.high + band.low);
