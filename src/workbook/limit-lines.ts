import { fromSi, type UnitId } from '../core/units';
import { PURPOSES } from '../plan/fields';
import type { Bound, Limits, ScopedLimit } from '../plan/limits';
import { limitNames, LIMIT_UNITS } from '../plan/limits-table';

const boundsOf = (limits: Limits): readonly (readonly [name: string, bound: Bound])[] => [
  ['Signal to noise', limits.signalToNoise],
  ['Headroom', limits.headroom],
  ...PURPOSES.map((purpose) => [`Mass ratio, ${purpose}`, limits.massRatio[purpose]] as const),
  ['Thermal tolerance', limits.thermalTolerance],
  ['Span tolerance', limits.spanTolerance],
];

interface LimitLine {
  readonly name: string;
  /** Rows for which alone it holds, as in "; modal; Wing skin". */
  readonly scope: string;
  /** A blank bound is that of the wider limit. */
  readonly pass: number | null;
  readonly warn: number | null;
  readonly unit: string;
  readonly origin: string;
  readonly reason: string;
}

/** Each limit in the unit of the limits sheet: name, bounds, unit and where it comes from. */
export const limitLines = (limits: Limits): readonly LimitLine[] => [
  ...boundsOf(limits).map(([name, { origin, reason, ...bound }]) => ({
    name,
    scope: '',
    ...shown(bound, LIMIT_UNITS[name] ?? '1'),
    origin,
    reason,
  })),
  ...(limits.scoped ?? []).map(scopedLine),
];

const shown = ({ pass, warn }: { readonly pass?: number; readonly warn?: number }, unit: UnitId) => {
  const inUnit = (si: number | undefined) => (si === undefined ? null : Number(fromSi(si, unit).toPrecision(12)));
  return { pass: inUnit(pass), warn: inUnit(warn), unit: unit === '1' ? '' : unit };
};

const scopedLine = (scoped: ScopedLimit): LimitLine => {
  const { limit, purpose, group, origin } = scoped;
  const [named] = limitNames().filter((known) => known.limit === limit);
  const name = limit === 'massRatio' ? 'Mass ratio' : (named?.name ?? limit);
  const scope = [purpose, group?.trim()].filter(Boolean).map((part) => `; ${part}`);
  return { name, scope: scope.join(''), ...shown(scoped, named?.unit ?? '1'), origin, reason: '' };
};
