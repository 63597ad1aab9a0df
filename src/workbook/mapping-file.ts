import type { InLanguages, Language } from '../core/language';
import { fieldsOf, TABLES, type TableName } from '../plan/fields';
import { isObject, shownJson } from '../plan/json-record';
import { columnLetters } from './address';
import type { FieldCorrection, Mapping, TableCorrection } from './tables';

/** Why a mapping cannot be read: the place in it, what was read and what is expected. */
export interface MappingProblem {
  readonly at: string;
  readonly read: unknown;
  readonly expected: string;
}

const SENTENCE: InLanguages<(at: string, read: string, expected: string) => string> = {
  en: (at, read, expected) => `${at}: read ${read}, expected ${expected}.`,
  de: (at, read, expected) => `${at}: gelesen ${read}, erwartet ${expected}.`,
  fr: (at, read, expected) => `${at} : lu ${read}, attendu ${expected}.`,
};
export const mappingSentence = ({ at, read, expected }: MappingProblem, language: Language = 'en'): string =>
  SENTENCE[language](at, shownJson(read), expected);

const FIELD_FORMS =
  'a heading in quotes, null for "in no column", or {"heading": …, "column": "E", "unit": …, "statistic": "rms" | "peak"}';

/**
 * Which column holds what, as a person writes it or the pane saves it:
 * `{"channels": {"sheet": "Test list", "headingRow": 4, "fields": {"levelHigh": {"heading": "Amax", "unit": "m/s²"}}}}`.
 */
export const readMapping = (given: unknown): Mapping | MappingProblem => {
  if (!isObject(given))
    return { at: 'the file', read: given, expected: 'an object in braces with one entry per table' };
  const mapping: Record<string, TableCorrection> = {};
  for (const [table, value] of Object.entries(given)) {
    const name = TABLES.find((known) => known === table);
    if (!name) return { at: 'a table', read: table, expected: `one of ${TABLES.join(', ')}` };
    if (!isObject(value)) return { at: table, read: value, expected: 'an object with sheet, headingRow or fields' };
    const { sheet, headingRow, fields: typed = {}, lists, fieldsOn = {}, ...others } = value;
    if (Object.keys(others)[0] !== undefined)
      return { at: table, read: Object.keys(others)[0], expected: 'sheet, headingRow, lists, fieldsOn or fields' };
    if (sheet !== undefined && typeof sheet !== 'string')
      return { at: `${table}.sheet`, read: sheet, expected: 'the name of a sheet' };
    if (headingRow !== undefined && !(Number.isInteger(headingRow) && (headingRow as number) > 0))
      return { at: `${table}.headingRow`, read: headingRow, expected: 'the row number of the headings, from 1' };
    if (lists !== undefined && !(name === 'channels' && isObject(lists) && areYesOrNo(lists)))
      return { at: `${table}.lists`, read: lists, expected: LISTS_FORM };
    if (!isObject(fieldsOn) || (name !== 'channels' && Object.keys(fieldsOn).length > 0))
      return {
        at: `${table}.fieldsOn`,
        read: fieldsOn,
        expected: 'of channels alone, an object with fields per sheet',
      };
    const fields = readFields(name, `${table}.fields`, typed);
    if (isProblem(fields)) return fields;
    const onSheets: Record<string, Fields> = {};
    for (const [one, given] of Object.entries(fieldsOn)) {
      const read = readFields(name, `${table}.fieldsOn.${one}`, given);
      if (isProblem(read)) return read;
      onSheets[one] = read;
    }
    mapping[name] = {
      ...(sheet === undefined ? {} : { sheet: sheet as string }),
      ...(headingRow === undefined ? {} : { headerRow: (headingRow as number) - 1 }),
      ...(lists === undefined ? {} : { lists: lists as Record<string, boolean> }),
      ...(Object.keys(onSheets).length === 0 ? {} : { fieldsOn: onSheets }),
      fields,
    };
  }
  return mapping;
};

type Fields = Readonly<Record<string, FieldCorrection>>;
const LISTS_FORM = 'of channels alone, an object that says true or false for each sheet';
const areYesOrNo = (given: Readonly<Record<string, unknown>>): boolean =>
  Object.values(given).every((value) => typeof value === 'boolean');
const isProblem = (read: Fields | MappingProblem): read is MappingProblem => typeof read.expected === 'string';

const readFields = (table: TableName, at: string, typed: unknown): Fields | MappingProblem => {
  if (!isObject(typed)) return { at, read: typed, expected: 'an object with one entry per field' };
  const fields: Record<string, FieldCorrection> = {};
  const keys = fieldsOf(table).map((known) => known.key);
  for (const [key, field] of Object.entries(typed)) {
    if (!keys.includes(key)) return { at, read: key, expected: `one of ${keys.join(', ')}` };
    const read = readField(field);
    if (!read) return { at: `${at}.${key}`, read: field, expected: FIELD_FORMS };
    fields[key] = read;
  }
  return fields;
};

export const isMappingProblem = (read: Mapping | MappingProblem): read is MappingProblem => 'expected' in read;

const readField = (field: unknown): FieldCorrection | undefined => {
  if (field === null) return { column: null };
  if (typeof field === 'string') return { column: { heading: field, column: 0 } };
  if (!isObject(field)) return undefined;
  const { heading, column, unit, statistic } = field;
  if (column !== undefined && (heading === undefined || typeof column !== 'string' || !/^[A-Z]{1,3}$/i.test(column)))
    return undefined;
  const isText = (value: unknown) => value === undefined || typeof value === 'string';
  if (!isText(heading) || !isText(unit)) return undefined;
  if (statistic !== undefined && statistic !== 'rms' && statistic !== 'peak') return undefined;
  return {
    ...(heading === undefined
      ? {}
      : { column: { heading: heading as string, column: placeOf(column as string | undefined) } }),
    ...(unit === undefined ? {} : { unitText: unit as string }),
    ...(statistic === undefined ? {} : { statistic }),
  };
};

/** 0-based; it only decides between columns with the same heading. */
const placeOf = (letters = 'A'): number =>
  [...letters.toUpperCase()].reduce((place, letter) => place * 26 + letter.charCodeAt(0) - 64, 0) - 1;

const written = ({ column, unitText, statistic }: FieldCorrection): unknown => {
  if (column === null) return null;
  return { heading: column?.heading, column: column && columnLetters(column.column), unit: unitText, statistic };
};

const writtenFields = (fields: Fields): Readonly<Record<string, unknown>> =>
  Object.fromEntries(Object.entries(fields).map(([key, field]) => [key, written(field)]));

/** What a person corrected, in the form that the command and the pane read; undefined where nothing was. */
export const mappingText = (mapping: Mapping): string | undefined => {
  const tables = TABLES.flatMap((table) => {
    const { sheet, headerRow, fields = {}, lists, fieldsOn } = mapping[table] ?? {};
    if (Object.keys(fields).length === 0 && [sheet, headerRow, lists, fieldsOn].every((said) => said === undefined))
      return [];
    const headingRow = headerRow === undefined ? undefined : headerRow + 1;
    const onSheets =
      fieldsOn && Object.fromEntries(Object.entries(fieldsOn).map(([one, own]) => [one, writtenFields(own)]));
    return [[table, { sheet, headingRow, lists, fieldsOn: onSheets, fields: writtenFields(fields) }] as const];
  });
  return tables.length === 0 ? undefined : `${JSON.stringify(Object.fromEntries(tables), null, 2)}\n`;
};

/** What was said before, with what is said now on top of it, field by field and sheet by sheet. */
export const mergedMapping = (before: Mapping, now: Mapping): Mapping =>
  Object.fromEntries(
    TABLES.flatMap((table) => {
      const [old, added] = [before[table], now[table]];
      if (!old && !added) return [];
      const lists = (old?.lists ?? added?.lists) && { lists: { ...old?.lists, ...added?.lists } };
      const fieldsOn = (old?.fieldsOn ?? added?.fieldsOn) && { fieldsOn: { ...old?.fieldsOn, ...added?.fieldsOn } };
      const fields = { ...old?.fields, ...added?.fields };
      return [[table, { ...old, ...added, ...lists, ...fieldsOn, fields }] as const];
    }),
  );
