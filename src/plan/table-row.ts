import type { ReadingOptions } from '../core/text/quantity';
import { fieldByKey, fieldsOf, type Field } from './fields';
import type { Misread } from './misread';
import { rangeEnds, readCell, type CellReading } from './table-cell';
import type { TableReading } from './table-reading';

/** What a row holds, by field key. */
export interface RowReading {
  readonly at: number;
  readonly sheet?: string;
  readonly part?: string;
  readonly values: Readonly<Record<string, unknown>>;
  /** Keys that were given but could not be read. */
  readonly unread: readonly string[];
}

const NONE: readonly string[] = [];

/** Reads every row of a table; rows without any value are left out. */
export const readRows = (table: TableReading, misreads: Misread[], options: ReadingOptions): readonly RowReading[] => {
  const fields = fieldsOf(table.name).filter(({ key }) => table.columns.has(key));
  return table.rows.flatMap((_, index) => {
    const row = readRow(table, index, fields, misreads, options);
    return Object.keys(row.values).length === 0 && row.unread.length === 0 ? [] : [row];
  });
};

const readRow = (
  table: TableReading,
  index: number,
  fields: readonly Field[],
  misreads: Misread[],
  options: ReadingOptions,
): RowReading => {
  const values: Record<string, unknown> = {};
  let unread = NONE;
  const at = table.at[index] ?? index + 1;
  const refuse = (field: Field, { read, expected, problem }: Refusal): void => {
    const heading = table.columns.get(field.key)?.heading ?? field.title;
    misreads.push({
      place: { kind: 'cell', table: table.name, sheet: table.sheet, row: at, heading, key: field.key },
      read,
      expected,
      problem,
    });
    unread = [...unread, field.key];
  };
  for (const field of fields) {
    const column = table.columns.get(field.key)!;
    const cell = table.rows[index]?.[column.column] ?? null;
    const reading = readCell(field, cell, column, options);
    if (reading.kind === 'value') values[field.key] = reading.value;
    else if (reading.kind === 'refused') refuse(field, reading);
    else if (reading.kind === 'range') {
      const [low, high] = rangeEnds(field.key)!;
      const other = table.columns.get(field.key === low ? high : low);
      const otherCell = other && table.rows[index]?.[other.column];
      const isAlone =
        otherCell === undefined || otherCell === null || otherCell === '' || other?.column === column.column;
      if (isAlone) Object.assign(values, { [low]: reading.low, [high]: reading.high });
      else
        refuse(field, {
          kind: 'refused',
          read: String(cell),
          expected: `one number beside ${fieldByKey(table.name, field.key === low ? high : low).title}`,
        });
    }
  }
  return { at, sheet: table.sheet, part: table.part, values, unread };
};

type Refusal = Extract<CellReading, { kind: 'refused' }>;
