import { fromSi } from '../core/units';
import { PURPOSES } from '../plan/fields';
import type { Bound, Limits } from '../plan/limits';
import { LIMIT_UNITS } from '../plan/limits-table';

const boundsOf = (limits: Limits): readonly (readonly [name: string, bound: Bound])[] => [
  ['Signal to noise', limits.signalToNoise],
  ['Headroom', limits.headroom],
  ...PURPOSES.map((purpose) => [`Mass ratio, ${purpose}`, limits.massRatio[purpose]] as const),
  ['Thermal tolerance', limits.thermalTolerance],
  ['Span tolerance', limits.spanTolerance],
];

/** Each limit in the unit of the limits sheet: name, bounds, unit and where it comes from. */
export const limitLines = (limits: Limits) =>
  boundsOf(limits).map(([name, { pass, warn, origin, reason }]) => {
    const unit = LIMIT_UNITS[name] ?? '1';
    const shown = (si: number | undefined) => (si === undefined ? null : Number(fromSi(si, unit).toPrecision(12)));
    return { name, pass: shown(pass), warn: shown(warn), unit: unit === '1' ? '' : unit, origin, reason };
  });
