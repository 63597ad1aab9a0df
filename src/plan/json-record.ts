import type { Curve } from '../core/curve';
import { toSi, type UnitId } from '../core/units';
import { obeys, signRule } from './bounds';
import type { TableName } from './fields';
import { dateFromText } from './json-date';
import type { JsonField, JsonFields } from './json-keys';
import type { Misread } from './misread';

export type JsonObject = Readonly<Record<string, unknown>>;

export const isObject = (value: unknown): value is JsonObject =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const DATE = 'a date, as in 2026-11-30';
const TEXT_LIMIT = 60;
export const shownJson = (value: unknown): string => {
  const text = typeof value === 'string' ? value : (JSON.stringify(value) ?? 'nothing');
  return text.length > TEXT_LIMIT ? `${text.slice(0, TEXT_LIMIT - 1)}…` : text;
};

/** Reads records of a JSON plan and remembers what could not be read. `null` means not known. */
export class JsonReader {
  readonly misreads: Misread[] = [];

  report(path: string, value: unknown, expected: string): undefined {
    this.misreads.push({ place: { kind: 'path', path }, read: shownJson(value), expected });
    return undefined;
  }

  object(value: unknown, path: string): JsonObject | undefined {
    return isObject(value) ? value : this.report(path, value, 'an object in braces');
  }

  text(value: unknown, path: string): string | undefined {
    if (value === undefined || value === null) return undefined;
    return typeof value === 'string' ? value : this.report(path, value, 'a text');
  }

  /** The fields of one record; keys outside `fields` and `others` are reported, for a misspelt key hides a value. */
  record(given: JsonObject, path: string, table: TableName, fields: JsonFields, others: readonly string[] = []) {
    const values: Record<string, unknown> = {};
    const unread: string[] = [];
    for (const [key, value] of Object.entries(given)) {
      const field = Object.hasOwn(fields, key) ? fields[key] : undefined;
      if (!field) {
        if (!others.includes(key)) this.report(`${path}.${key}`, value, `one of ${Object.keys(fields).join(', ')}`);
      } else if (value !== null) {
        const result = this.value(field, value, `${path}.${key}`, table);
        if (result === undefined) unread.push(field.to);
        else values[field.to] = result;
      }
    }
    return unread.length === 0 ? values : { ...values, unread };
  }

  private value(field: JsonField, value: unknown, path: string, table: TableName): unknown {
    switch (field.kind) {
      case 'text':
        return this.text(value, path);
      case 'date':
        return typeof value === 'string'
          ? (dateFromText(value) ?? this.report(path, value, DATE))
          : this.report(path, value, DATE);
      case 'choice':
        return typeof value === 'string' && field.choices.includes(value)
          ? value
          : this.report(path, value, `one of ${field.choices.join(', ')}`);
      case 'number':
        return this.number(value, path, field.unit, table, field.field ?? '');
      case 'numbers':
        return this.numbers(value, path, field.unit, table, field.field ?? '');
      case 'pairs':
        return this.curve(value, path, field.x, field.unit);
    }
  }

  number(value: unknown, path: string, unit: UnitId, table: TableName, key: string): number | undefined {
    if (typeof value !== 'number' || !Number.isFinite(value)) return this.report(path, value, `a number in ${unit}`);
    const rule = signRule(table, key);
    return obeys(value, rule) ? toSi(value, unit) : this.report(path, value, `a number ${rule}`);
  }

  private numbers(value: unknown, path: string, unit: UnitId, table: TableName, key: string) {
    if (!Array.isArray(value)) return this.report(path, value, `a list of numbers in ${unit}`);
    const read = value.map((entry, i) => this.number(entry, `${path}[${i}]`, unit, table, key));
    return read.every((entry) => entry !== undefined) ? read : undefined;
  }

  private curve(value: unknown, path: string, xUnit: UnitId, yUnit: UnitId): Curve | undefined {
    const expected = `pairs [${xUnit}, ${yUnit}] with rising first numbers`;
    if (!Array.isArray(value) || value.length === 0) return this.report(path, value, expected);
    const x: number[] = [];
    const y: number[] = [];
    for (const [i, pair] of (value as unknown[]).entries()) {
      const [left, right] = Array.isArray(pair) && pair.length === 2 ? (pair as unknown[]) : [];
      const isPair = Number.isFinite(left) && Number.isFinite(right);
      if (!isPair || toSi(left as number, xUnit) < (x[i - 1] ?? -Infinity))
        return this.report(`${path}[${i}]`, pair, expected);
      x.push(toSi(left as number, xUnit));
      y.push(toSi(right as number, yUnit));
    }
    const isDensity = xUnit === 'Hz';
    if (isDensity && (x[0]! <= 0 || y.some((density) => density <= 0)))
      return this.report(path, value, 'frequencies and densities above 0');
    return { x, y };
  }
}
