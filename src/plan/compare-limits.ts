import type { UnitId } from '../core/units';
import { PURPOSES } from './fields';
import type { Bound, Limits, ScopedLimit } from './limits';
import { LIMIT_UNITS } from './limits-table';

/** One bound that the two plans set differently. Numbers in SI. */
export interface LimitChange {
  /** As in the limits sheet, or "Calibration temperature". */
  readonly name: string;
  readonly bound: 'pass' | 'warn';
  readonly before?: number;
  readonly after?: number;
  readonly unit: UnitId;
  /** Of a limit for one purpose, one structure part or both. */
  readonly scope?: string;
}

export const CALIBRATION_TEMPERATURE = 'Calibration temperature';

const boundsOf = (limits: Limits): readonly (readonly [name: string, bound: Bound])[] => [
  ['Signal to noise', limits.signalToNoise],
  ['Headroom', limits.headroom],
  ...PURPOSES.map((purpose) => [`Mass ratio, ${purpose}`, limits.massRatio[purpose]] as const),
  ['Thermal tolerance', limits.thermalTolerance],
  ['Span tolerance', limits.spanTolerance],
];

const SCOPED_NAMES: Readonly<Record<ScopedLimit['limit'], string>> = {
  signalToNoise: 'Signal to noise',
  headroom: 'Headroom',
  massRatio: 'Mass ratio',
  thermalTolerance: 'Thermal tolerance',
  spanTolerance: 'Span tolerance',
};
const scopeOf = ({ limit, purpose, group }: ScopedLimit): string =>
  [SCOPED_NAMES[limit], purpose, group?.trim().replace(/\s+/g, ' ')].filter(Boolean).join(', ');
const scopeKey = (scoped: ScopedLimit): string => scopeOf(scoped).toLowerCase();

const compareScoped = (before: Limits, after: Limits): readonly LimitChange[] => {
  const [was, is] = [before, after].map(({ scoped = [] }) => new Map(scoped.map((one) => [scopeKey(one), one])));
  return [...new Set([...was!.keys(), ...is!.keys()])].flatMap((key): LimitChange[] => {
    const one = (is!.get(key) ?? was!.get(key))!;
    const name = SCOPED_NAMES[one.limit];
    return (['pass', 'warn'] as const).flatMap((bound): LimitChange[] => {
      const [old, fresh] = [was!.get(key)?.[bound], is!.get(key)?.[bound]];
      return old === fresh
        ? []
        : [{ name: scopeOf(one), bound, before: old, after: fresh, unit: LIMIT_UNITS[name] ?? '1', scope: key }];
    });
  });
};

export const compareLimits = (before: Limits, after: Limits): readonly LimitChange[] => {
  const bounds = boundsOf(before).flatMap(([name, was], i): LimitChange[] => {
    const is = boundsOf(after)[i]![1];
    return (['pass', 'warn'] as const).flatMap((bound): LimitChange[] =>
      was[bound] === is[bound]
        ? []
        : [{ name, bound, before: was[bound], after: is[bound], unit: LIMIT_UNITS[name] ?? '1' }],
    );
  });
  const [was, is] = [before.calibrationTemperature, after.calibrationTemperature];
  const all = [...bounds, ...compareScoped(before, after)];
  return was === is
    ? all
    : [...all, { name: CALIBRATION_TEMPERATURE, bound: 'pass', before: was, after: is, unit: '°C' }];
};

/** `to` with the one bound that `from` has. */
export const withLimitOf = (to: Limits, from: Limits, { name, bound, scope }: LimitChange): Limits => {
  if (scope !== undefined) {
    const others = (to.scoped ?? []).filter((scoped) => scopeKey(scoped) !== scope);
    const taken = (from.scoped ?? []).filter((scoped) => scopeKey(scoped) === scope);
    const scoped = [...others, ...taken];
    return { ...to, scoped: scoped.length > 0 ? scoped : undefined };
  }
  const taken = (own: Bound, other: Bound): Bound => ({ ...own, [bound]: other[bound], origin: other.origin });
  const purpose = PURPOSES.find((known) => name === `Mass ratio, ${known}`);
  if (purpose) {
    const massRatio = { ...to.massRatio, [purpose]: taken(to.massRatio[purpose], from.massRatio[purpose]) };
    return { ...to, massRatio };
  }
  switch (name) {
    case 'Signal to noise':
      return { ...to, signalToNoise: taken(to.signalToNoise, from.signalToNoise) };
    case 'Headroom':
      return { ...to, headroom: taken(to.headroom, from.headroom) };
    case 'Thermal tolerance':
      return { ...to, thermalTolerance: taken(to.thermalTolerance, from.thermalTolerance) };
    case 'Span tolerance':
      return { ...to, spanTolerance: taken(to.spanTolerance, from.spanTolerance) };
    default:
      return { ...to, calibrationTemperature: from.calibrationTemperature };
  }
};
