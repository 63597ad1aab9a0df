import type { Curve } from '../../core/curve';
import { failure, outcome, type Outcome } from '../../core/issue';
import { spectrumFault } from '../../core/level/spectrum';
import { fromSi, type UnitId } from '../../core/units';

/** Refuses a table that cannot be drawn on log-log axes, showing the first point at fault. */
export const onLogAxes = (curve: Curve, arg: string, yUnit: UnitId): Outcome<Curve> => {
  const fault = spectrumFault(curve);
  if (!fault) return outcome(curve);
  const given = `${curve.x[fault.point]}:${fromSi(curve.y[fault.point] ?? Number.NaN, yUnit)}`;
  return failure({ code: 'bad-curve', arg, given, rule: fault.rule });
};
