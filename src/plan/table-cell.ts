import type { Problem } from '../core/issue';
import { isAbsentText, isDittoText } from '../core/text/absent';
import { readCurve } from '../core/text/curve';
import { withoutFootnote } from '../core/text/marks';
import { readList } from '../core/text/list';
import { readQuantity, type QuantityReading, type ReadingOptions } from '../core/text/quantity';
import { readRange } from '../core/text/range';
import { toSi, UNITS, type UnitId } from '../core/units';
import { obeys, signRule } from './bounds';
import { readDateText } from './date-text';
import type { Field } from './fields';
import type { CellValue } from './heading-evidence';
import { isErrorCell, type ColumnReading } from './table-reading';

/** What one cell gave: a value, both ends of a range, nothing, or a refusal that says what was expected. */
export type CellReading =
  | { readonly kind: 'value'; readonly value: unknown }
  | { readonly kind: 'range'; readonly low: number; readonly high: number }
  | { readonly kind: 'blank' }
  | { readonly kind: 'refused'; readonly read: string; readonly expected: string; readonly problem?: Problem };

const BLANK: CellReading = { kind: 'blank' };
const value = (of: unknown): CellReading => ({ kind: 'value', value: of });
const refused = (cell: CellValue, expected: string, problem?: Problem): CellReading => ({
  kind: 'refused',
  read: isErrorCell(cell) ? cell.error : String(cell),
  expected,
  problem,
});

/** Reads a cell by its field's kind and its heading's unit. A blank is not known; 0 is 0. */
export const readCell = (
  field: Field,
  cell: CellValue,
  column: ColumnReading,
  options: ReadingOptions = {},
): CellReading => {
  if (cell === null || cell === '') return BLANK;
  const held = typeof cell === 'number' || typeof cell === 'string' ? column.held?.get(cell) : undefined;
  if (held)
    return refused(held.shown, expectedIn(field, column), {
      code: 'ambiguous',
      given: held.shown,
      readings: held.readings,
    });
  // In a list a lone dash says "none".
  const isDash = field.kind === 'list' && typeof cell === 'string' && readList(cell, 'Hz').ok;
  if (typeof cell === 'string' && (cell.trim() === '' || (isAbsentText(cell) && !isDash))) return BLANK;
  if (isErrorCell(cell) || typeof cell === 'boolean') return refused(cell, expectedIn(field, column));
  if (typeof cell === 'string' && field.key !== 'remarks' && isDittoText(cell))
    return refused(cell, `${expectedIn(field, column)}, written out in each row`);
  switch (field.kind) {
    case 'text':
      return value(String(cell).trim());
    case 'choice':
      return readChoice(field, cell);
    case 'date':
      return readDate(cell);
    case 'curve':
      return readCurveCell(field, cell, column, options);
    case 'list':
      return readListCell(field, cell, column, options);
    case 'quantity':
      return readQuantityCell(field, cell, column, options);
  }
};

/** A unit of ours needs no reading. */
const unitTextOf = ({ unit, unitText }: ColumnReading): string | undefined => (unit ? undefined : unitText);

const unitOf = (field: Field, column: ColumnReading): UnitId => column.unit ?? field.unit ?? '1';

const expectedIn = (field: Field, column: ColumnReading): string => {
  if (field.kind === 'choice') return `one of ${field.choices?.join(', ')}`;
  if (field.kind === 'date') return 'a date';
  if (field.kind === 'text') return 'a text';
  if (field.kind === 'curve')
    return `pairs ${UNITS[field.xUnit ?? '1'].label}:${UNITS[unitOf(field, column)].label}, separated by semicolons`;
  const label = unitTextOf(column) ?? UNITS[unitOf(field, column)].label;
  const number = label === '' ? 'a number' : `a number in ${label}`;
  const rule = signRule(field.table, field.key);
  const what = field.kind === 'list' ? `${number}, several separated by semicolons, or "none"` : number;
  return [what, field.statistic && (field.statistic === 'rms' ? 'r.m.s.' : field.statistic), rule]
    .filter(Boolean)
    .join(', ');
};

const readChoice = (field: Field, cell: string | number): CellReading => {
  const typed = String(cell).trim().toLowerCase();
  const choice = field.choices?.find((known) => known.toLowerCase() === typed);
  return choice === undefined ? refused(cell, `one of ${field.choices?.join(', ')}`) : value(choice);
};

const readDate = (cell: string | number): CellReading => {
  if (typeof cell === 'number') return value(cell);
  const date = readDateText(cell);
  return date.ok ? value(date.serial) : refused(cell, 'a date, as in 2026-11-30', date.problem);
};

const readCurveCell = (
  field: Field,
  cell: string | number,
  column: ColumnReading,
  options: ReadingOptions,
): CellReading => {
  const reading = readCurve(String(cell), field.xUnit ?? '1', unitOf(field, column), options);
  if (!reading.ok) return refused(cell, expectedIn(field, column), reading.problem);
  const { x, y } = reading.value;
  if (field.xUnit === 'Hz' && (x.some((hertz) => hertz <= 0) || y.some((density) => density <= 0)))
    return refused(cell, 'frequencies and densities above 0');
  if (field.unit === '%' && y.some((deviation) => deviation <= -1)) return refused(cell, 'deviations above −100 %');
  return value(reading.value);
};

const readListCell = (
  field: Field,
  cell: string | number,
  column: ColumnReading,
  options: ReadingOptions,
): CellReading => {
  const unit = unitOf(field, column);
  const reading =
    typeof cell === 'number' && !unitTextOf(column)
      ? { ok: true as const, value: [toSi(cell, unit)] }
      : readList(typeof cell === 'number' ? `${cell} ${unitTextOf(column)}` : cell, unit, options);
  if (!reading.ok) return refused(cell, expectedIn(field, column), reading.problem);
  const rule = signRule(field.table, field.key);
  return reading.value.every((entry) => obeys(entry, rule))
    ? value(reading.value)
    : refused(cell, expectedIn(field, column));
};

const readQuantityCell = (
  field: Field,
  cell: string | number,
  column: ColumnReading,
  options: ReadingOptions,
): CellReading => {
  const unit = unitOf(field, column);
  if (typeof cell === 'number' && unitTextOf(column) === undefined)
    return judged(field, cell, column, { si: toSi(cell, unit) });
  let reading = readQuantity(typeof cell === 'number' ? `${cell} ${unitTextOf(column)}` : cell, unit, options);
  if (
    typeof cell === 'string' &&
    reading.ok &&
    unitTextOf(column) !== undefined &&
    reading.value.unitText === undefined
  )
    reading = readQuantity(`${withoutFootnote(cell)} ${unitTextOf(column)}`, unit, options);
  if (isRangeEnd(field) && typeof cell === 'string' && (!reading.ok || reading.value.symmetric)) {
    const range = readRange(cell, unit, options);
    if (range.ok) return { kind: 'range', low: range.value.low, high: range.value.high };
    if (!reading.ok && range.problem.code === 'ambiguous')
      return refused(cell, expectedIn(field, column), range.problem);
  }
  if (!reading.ok) return refused(cell, expectedIn(field, column), reading.problem);
  return judged(field, cell, column, reading.value);
};

/** A level's statistic and every number's sign. */
const judged = (field: Field, cell: string | number, column: ColumnReading, reading: QuantityReading): CellReading => {
  const statistic = reading.statistic ?? column.statistic;
  let { si } = reading;
  if (field.statistic && statistic && statistic !== field.statistic) {
    if (field.statistic !== 'peak' || statistic !== 'peak-to-peak') {
      const problem: Problem = { code: 'wrong-statistic', given: String(cell), expected: field.statistic };
      return refused(cell, expectedIn(field, column), problem);
    }
    si /= 2;
  }
  return Number.isFinite(si) && obeys(si, signRule(field.table, field.key))
    ? value(si)
    : refused(cell, expectedIn(field, column));
};

/** Fields in whose cell a range text fills both ends, by the key of the other end. */
export const OTHER_END: Readonly<Record<string, string>> = {
  temperatureLow: 'temperatureHigh',
  bandLow: 'bandHigh',
  temperatureMin: 'temperatureMax',
  biasMin: 'biasMax',
  mountTemperatureMin: 'mountTemperatureMax',
  cableTemperatureMin: 'cableTemperatureMax',
};
const LOW_END: Readonly<Record<string, string>> = Object.fromEntries(Object.entries(OTHER_END).map(([a, b]) => [b, a]));
export const rangeEnds = (key: string): readonly [string, string] | undefined => {
  const low = OTHER_END[key] ? key : LOW_END[key];
  const high = low && OTHER_END[low];
  return low && high ? [low, high] : undefined;
};
const isRangeEnd = (field: Field): boolean => rangeEnds(field.key) !== undefined;
