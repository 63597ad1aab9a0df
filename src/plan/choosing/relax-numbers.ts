import { fromSi, toSi, UNITS, type UnitId } from '../../core/units';
import type { Knob } from './relax-knobs';

const KNOB_UNITS: Readonly<Record<Knob, UnitId>> = {
  'lowest level': 'g',
  'highest level': 'g',
  'band low': 'Hz',
  'band high': 'Hz',
  'temperature low': '°C',
  'temperature high': '°C',
  'thermal tolerance': '%',
  'span tolerance': '%',
  'mass ratio limit': '1',
  'local mass': 'gram',
  'line spacing': 'Hz',
};

const MOST_DIGITS = 12;
/** A rounded change may be larger than the found one by this part of it. */
const ROUNDING = 0.02;

/** Rounds away from `from`, so that what helps at `to` helps at the rounded figure as well. In SI. */
export const roundedAway = (knob: Knob, from: number, to: number): number => {
  const unit = KNOB_UNITS[knob];
  const [start, end] = [fromSi(from, unit), fromSi(to, unit)];
  const round = end > start ? Math.ceil : Math.floor;
  for (let digits = 3; digits < MOST_DIGITS; digits++) {
    const step = 10 ** (Math.floor(Math.log10(Math.abs(end) || 1)) + 1 - digits);
    const rounded = Number((round(end / step) * step).toPrecision(digits));
    if (Math.abs(rounded - end) <= ROUNDING * Math.abs(end - start)) return toSi(rounded, unit);
  }
  return to;
};

/** Below this many g an acceleration is written in millionths, for "mg" would read as a mass. */
const SMALL_G = 0.01;
const MILLIONTHS = 1e6;

/** A figure with its unit, to as many digits as it has. */
export const figure = (knob: Knob, si: number): string => {
  const unit = KNOB_UNITS[knob];
  const value = fromSi(si, unit);
  const isSmall = unit === 'g' && value !== 0 && Math.abs(value) < SMALL_G;
  const shown = String(Number((isSmall ? value * MILLIONTHS : value).toPrecision(MOST_DIGITS))).replace('-', '−');
  return `${shown} ${isSmall ? 'µg' : UNITS[unit].label}`.trimEnd();
};

/** For figures that came from a plan and need no more than three digits. */
export const shortFigure = (knob: Knob, si: number): string =>
  figure(knob, toSi(Number(fromSi(si, KNOB_UNITS[knob]).toPrecision(3)), KNOB_UNITS[knob]));
