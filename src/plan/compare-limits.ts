import type { UnitId } from '../core/units';
import { PURPOSES } from './fields';
import type { Bound, Limits } from './limits';
import { LIMIT_UNITS } from './limits-table';

/** One bound that the two plans set differently. Numbers in SI. */
export interface LimitChange {
  /** As in the limits sheet, or "Calibration temperature". */
  readonly name: string;
  readonly bound: 'pass' | 'warn';
  readonly before?: number;
  readonly after?: number;
  readonly unit: UnitId;
}

export const CALIBRATION_TEMPERATURE = 'Calibration temperature';

const boundsOf = (limits: Limits): readonly (readonly [name: string, bound: Bound])[] => [
  ['Signal to noise', limits.signalToNoise],
  ['Headroom', limits.headroom],
  ...PURPOSES.map((purpose) => [`Mass ratio, ${purpose}`, limits.massRatio[purpose]] as const),
  ['Thermal tolerance', limits.thermalTolerance],
  ['Span tolerance', limits.spanTolerance],
];

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
  return was === is
    ? bounds
    : [...bounds, { name: CALIBRATION_TEMPERATURE, bound: 'pass', before: was, after: is, unit: '°C' }];
};

/** `to` with the one bound that `from` has. */
export const withLimitOf = (to: Limits, from: Limits, { name, bound }: LimitChange): Limits => {
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
