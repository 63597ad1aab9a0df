import { amplitudeRatio } from '../../core/level/margin';
import { fromSi, toSi } from '../../core/units';

/** Where one sensor takes over from the other, m/s². */
export interface Handover {
  /** Highest peak of the low range. */
  readonly lowTop: number;
  /** Lowest r.m.s. level of the high range. */
  readonly highFrom: number;
}

/** Both ranges must share so many dB, that one can be compared with the other (common practice, no source). */
export const LEAST_OVERLAP = 10;

/** In the middle of what both can read, to one digit in g where that fits; undefined when they do not overlap enough. */
export const chooseHandover = (lowest: number, highest: number): Handover | undefined => {
  const overlap = amplitudeRatio(LEAST_OVERLAP);
  if (!(highest >= lowest * overlap)) return undefined;
  const middle = Math.sqrt(lowest * highest);
  const exact = { lowTop: middle * Math.sqrt(overlap), highFrom: middle / Math.sqrt(overlap) };
  const lowTop = roundedInG(exact.lowTop, Math.ceil);
  const highFrom = roundedInG(exact.highFrom, Math.floor);
  return {
    lowTop: lowTop <= highest ? lowTop : exact.lowTop,
    highFrom: highFrom >= lowest ? highFrom : exact.highFrom,
  };
};

const roundedInG = (si: number, round: (digits: number) => number): number => {
  const g = fromSi(si, 'g');
  const unit = 10 ** Math.floor(Math.log10(g));
  return toSi(Number((round(g / unit) * unit).toPrecision(1)), 'g');
};
