import type { Curve } from '../core/curve';
import { formatCurve } from '../core/text/format';
import { markedIn, type Language } from '../core/language';
import { fromSi, UNITS, type UnitId } from '../core/units';
import { fieldByKey, type TableName } from './fields';
import { joinName } from './join-name';
import type { FieldValue } from './item-fields';
import { dateText } from './json-date';

/** What one side holds in a field. */
export interface Held {
  /** As it stands in the cell; absent where there is none. */
  readonly typed?: string;
  readonly value?: FieldValue;
  /** Given, but not readable. */
  readonly isUnread: boolean;
}

/** Cells hold doubles that programs write with 15 to 17 digits. */
const ALIKE = 1e-12;
const isAlike = (a: number, b: number): boolean =>
  a === b || Math.abs(a - b) <= ALIKE * Math.max(Math.abs(a), Math.abs(b));
const isCurve = (value: FieldValue): value is Curve => typeof value === 'object' && 'x' in value;
const areAlike = (a: readonly number[], b: readonly number[]): boolean =>
  a.length === b.length && a.every((number, i) => isAlike(number, b[i]!));

/** Names join tables whatever their case and blanks. */
const NAMES: readonly string[] = ['channel', 'sensor', 'mount', 'cable', 'input'];

export const isSameHeld = (key: string, a: Held, b: Held): boolean => {
  // A plan without cells says only that something stood there.
  const isTypedAlike = a.typed === undefined || b.typed === undefined || a.typed === b.typed;
  if (a.isUnread || b.isUnread) return a.isUnread === b.isUnread && isTypedAlike;
  const [one, other] = [a.value, b.value];
  if (one === undefined || other === undefined) return one === other;
  if (typeof one === 'number' && typeof other === 'number') return isAlike(one, other);
  if (typeof one === 'string' && typeof other === 'string')
    return NAMES.includes(key) ? joinName(one) === joinName(other) : one.trim() === other.trim();
  if (typeof one !== 'object' || typeof other !== 'object') return false;
  if (isCurve(one)) return isCurve(other) && areAlike(one.x, other.x) && areAlike(one.y, other.y);
  return !isCurve(other) && areAlike(one, other);
};

const DIGITS = 12;
const numberText = (si: number, unit: UnitId): string =>
  `${Number(fromSi(si, unit).toPrecision(DIGITS))}`.replace('-', '−');

/** The value as read, in the documented unit; undefined where nothing is known. */
export const valueText = (
  table: TableName,
  key: string,
  value: FieldValue | undefined,
  language: Language = 'en',
): string | undefined => {
  if (value === undefined || typeof value === 'string') return value;
  const { kind, unit = '1', xUnit = '1' } = fieldByKey(table, key);
  if (kind === 'date' && typeof value === 'number') return dateText(value);
  const { label } = UNITS[unit];
  if (typeof value === 'number') return markedIn(`${numberText(value, unit)} ${label}`.trim(), language);
  // Pairs keep the decimal point, as they are read.
  if (isCurve(value)) return `${formatCurve(value, xUnit, unit, DIGITS)} (${UNITS[xUnit].label}:${label})`;
  return value.length === 0 ? '–' : `${value.map((si) => numberText(si, unit)).join('; ')} ${label}`;
};
