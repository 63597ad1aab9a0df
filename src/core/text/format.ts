import { fromSi, UNITS, type UnitId } from '../units';

/** The value in its unit, in a form that reads back to the same number. */
export const formatQuantity = (si: number, unit: UnitId, digits?: number): string => {
  if (!Number.isFinite(si)) return '–';
  const value = fromSi(si, unit);
  const shown = digits === undefined ? value : Number(value.toPrecision(digits));
  return `${shown} ${UNITS[unit].label}`.trimEnd();
};
