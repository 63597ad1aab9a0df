import { fieldsOf, TABLES } from '../../plan/fields';
import { isObject, shownJson } from '../../plan/json-record';
import type { FieldCorrection, Mapping, TableCorrection } from '../../workbook/tables';
import { parseJson } from './json-file';
import { CommandProblem } from './status';

const FIELD_FORMS =
  'a heading in quotes, null for "in no column", or {"heading": …, "unit": …, "statistic": "rms" | "peak"}';

/**
 * Which column holds what, as a person writes it:
 * `{"channels": {"sheet": "Test list", "headingRow": 4, "fields": {"levelHigh": {"heading": "Amax", "unit": "m/s²"}}}}`.
 */
export const readMappingFile = async (path: string): Promise<Mapping> => {
  const refuse = (at: string, read: unknown, expected: string): never => {
    throw new CommandProblem(`${path}: ${at}: read ${shownJson(read)}, expected ${expected}.`);
  };
  const given = await parseJson(path, 'an object in braces with one entry per table');
  if (!isObject(given)) return refuse('the file', given, 'an object in braces with one entry per table');
  const mapping: Record<string, TableCorrection> = {};
  for (const [table, value] of Object.entries(given)) {
    const name = TABLES.find((known) => known === table);
    if (!name) return refuse('a table', table, `one of ${TABLES.join(', ')}`);
    if (!isObject(value)) return refuse(table, value, 'an object with sheet, headingRow or fields');
    const fields: Record<string, FieldCorrection> = {};
    const { sheet, headingRow, fields: typed = {}, ...others } = value;
    if (Object.keys(others)[0] !== undefined)
      return refuse(table, Object.keys(others)[0], 'sheet, headingRow or fields');
    if (sheet !== undefined && typeof sheet !== 'string') return refuse(`${table}.sheet`, sheet, 'the name of a sheet');
    if (headingRow !== undefined && !(Number.isInteger(headingRow) && (headingRow as number) > 0))
      return refuse(`${table}.headingRow`, headingRow, 'the row number of the headings, from 1');
    if (!isObject(typed)) return refuse(`${table}.fields`, typed, 'an object with one entry per field');
    for (const [key, field] of Object.entries(typed)) {
      const keys = fieldsOf(name).map((known) => known.key);
      if (!keys.includes(key)) return refuse(`${table}.fields`, key, `one of ${keys.join(', ')}`);
      fields[key] = readField(field) ?? refuse(`${table}.fields.${key}`, field, FIELD_FORMS);
    }
    mapping[name] = {
      ...(sheet === undefined ? {} : { sheet: sheet as string }),
      ...(headingRow === undefined ? {} : { headerRow: (headingRow as number) - 1 }),
      fields,
    };
  }
  return mapping;
};

const readField = (field: unknown): FieldCorrection | undefined => {
  if (field === null) return { column: null };
  if (typeof field === 'string') return { column: { heading: field, column: 0 } };
  if (!isObject(field)) return undefined;
  const { heading, unit, statistic } = field;
  const isText = (value: unknown) => value === undefined || typeof value === 'string';
  if (!isText(heading) || !isText(unit)) return undefined;
  if (statistic !== undefined && statistic !== 'rms' && statistic !== 'peak') return undefined;
  return {
    ...(heading === undefined ? {} : { column: { heading: heading as string, column: 0 } }),
    ...(unit === undefined ? {} : { unitText: unit as string }),
    ...(statistic === undefined ? {} : { statistic }),
  };
};
