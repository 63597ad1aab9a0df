import { fieldByKey, fieldsOf, TABLES, type TableName } from '../plan/fields';
import { unitIdOf } from '../plan/heading-text';
import type { ColumnUse, FieldCorrection, Mapping, TableCorrection } from './tables';

/** Applies what the user said on top of what was found; a column that the user gave away is taken from its field. */
export const applyCorrections = (
  table: TableName,
  found: ReadonlyMap<string, ColumnUse>,
  headings: ReadonlyMap<number, string>,
  correction: TableCorrection | undefined,
): Map<string, ColumnUse> => {
  const columns = new Map(found);
  const knownKeys = new Set(fieldsOf(table).map(({ key }) => key));
  for (const [key, { column: place, unitText, statistic }] of Object.entries(correction?.fields ?? {})) {
    if (!knownKeys.has(key)) continue;
    if (place === null) {
      columns.delete(key);
      continue;
    }
    let use = columns.get(key);
    if (place !== undefined) {
      const column = findColumn(headings, place);
      if (column === undefined) continue;
      for (const [other, { column: taken }] of columns) if (taken === column && other !== key) columns.delete(other);
      const same = use?.column === column ? use : undefined;
      use = { ...(same ?? { column, heading: headings.get(column) ?? '', alternatives: [] }), ...SAID };
    }
    if (use === undefined) continue;
    if (unitText !== undefined) {
      const { unit: documented } = fieldByKey(table, key);
      use = { ...use, ...SAID, unitText, unit: documented && unitIdOf(unitText, documented) };
    }
    if (statistic !== undefined) use = { ...use, ...SAID, statistic };
    columns.set(key, use);
  }
  return columns;
};
const SAID = { confidence: 1, evidence: 'as you said' } as const;

/** The heading is what the user meant; the place decides between equal headings and after a renaming. */
const findColumn = (
  headings: ReadonlyMap<number, string>,
  place: { readonly heading: string; readonly column: number },
): number | undefined => {
  const equal = [...headings].filter(([, heading]) => heading === place.heading).map(([column]) => column);
  if (equal.length > 0)
    return equal.reduce((near, c) => (Math.abs(c - place.column) < Math.abs(near - place.column) ? c : near));
  return undefined;
};

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const readField = (value: unknown): FieldCorrection | undefined => {
  if (!isRecord(value)) return undefined;
  const { column, unitText, statistic } = value;
  const place =
    column === null
      ? null
      : isRecord(column) && typeof column.heading === 'string' && Number.isInteger(column.column)
        ? { heading: column.heading, column: column.column as number }
        : undefined;
  return {
    ...(place === undefined ? {} : { column: place }),
    ...(typeof unitText === 'string' && unitText.length <= 40 ? { unitText } : {}),
    ...(statistic === 'rms' || statistic === 'peak' ? { statistic } : {}),
  };
};

/** Reads what was kept in a workbook. It may come from anywhere: what is not understood is left out. */
export const parseMapping = (json: string | undefined): Mapping => {
  let value: unknown;
  try {
    value = JSON.parse(json ?? '{}');
  } catch {
    return {};
  }
  if (!isRecord(value)) return {};
  const mapping: Partial<Record<TableName, TableCorrection>> = {};
  for (const table of TABLES) {
    const given = Object.hasOwn(value, table) ? value[table] : undefined;
    if (!isRecord(given)) continue;
    mapping[table] = {
      ...(typeof given.sheet === 'string' ? { sheet: given.sheet } : {}),
      ...(Number.isInteger(given.headerRow) ? { headerRow: given.headerRow as number } : {}),
      fields: readFields(table, given.fields),
      ...(table === 'channels' ? readSheets(given) : {}),
    };
  }
  return mapping;
};

const readFields = (table: TableName, given: unknown): Record<string, FieldCorrection> => {
  const fields: Record<string, FieldCorrection> = {};
  for (const { key } of fieldsOf(table)) {
    const field = isRecord(given) && Object.hasOwn(given, key) ? readField(given[key]) : undefined;
    if (field !== undefined) fields[key] = field;
  }
  return fields;
};

const readSheets = ({ lists, fieldsOn }: Record<string, unknown>): Pick<TableCorrection, 'lists' | 'fieldsOn'> => ({
  ...(isRecord(lists) && {
    lists: Object.fromEntries(
      Object.entries(lists).filter((entry): entry is [string, boolean] => typeof entry[1] === 'boolean'),
    ),
  }),
  ...(isRecord(fieldsOn) && {
    fieldsOn: Object.fromEntries(
      Object.entries(fieldsOn).map(([sheet, given]) => [sheet, readFields('channels', given)]),
    ),
  }),
});

export const mappingJson = (mapping: Mapping): string => JSON.stringify(mapping);
