import type { Curve } from '../curve';
import { fromSi, UNITS, type UnitId } from '../units';

const inUnit = (si: number, unit: UnitId, digits?: number): number => {
  const value = fromSi(si, unit);
  return digits === undefined ? value : Number(value.toPrecision(digits));
};

/** The value with its unit in a form that reads back; without `digits` to the same number. */
export const formatQuantity = (si: number, unit: UnitId, digits?: number): string =>
  Number.isFinite(si) ? `${inUnit(si, unit, digits)} ${UNITS[unit].label}`.trimEnd() : '–';

/** "x:y; x:y" in the documented units, as readCurve reads it. */
export const formatCurve = (curve: Curve, xUnit: UnitId, yUnit: UnitId, digits?: number): string =>
  curve.x.map((x, i) => `${inUnit(x, xUnit, digits)}:${inUnit(curve.y[i] ?? Number.NaN, yUnit, digits)}`).join('; ');
