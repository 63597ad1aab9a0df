import { temperatureLimitsVerdict, type Limits, type Verdict } from '../verdict';

/** Operating limits of one part at the point, °C. */
export interface NamedLimits extends Limits {
  readonly name: string;
}

export const limitVerdict = (part: NamedLimits, low: number, high: number): Verdict =>
  temperatureLimitsVerdict({ min: low, max: high }, part);

const shown = (temperature: number): string => String(Number(temperature.toPrecision(4))).replace('-', '−');

/** What a part lacks, or what it has to spare at the cold and at the hot end. */
export const describeLimit = ({ min, max }: NamedLimits, low: number, high: number): string => {
  const short = [
    min !== undefined && low < min
      ? `starts at ${shown(min)} °C, ${shown(min - low)} K short of ${shown(low)} °C`
      : undefined,
    max !== undefined && high > max
      ? `ends at ${shown(max)} °C, ${shown(high - max)} K short of ${shown(high)} °C`
      : undefined,
  ].filter((text) => text !== undefined);
  if (short.length > 0) return short.join('; ');
  if (min === undefined) return max === undefined ? 'both limits missing' : 'lower limit missing';
  if (max === undefined) return 'upper limit missing';
  return `${shown(low - min)} K and ${shown(max - high)} K to spare`;
};
