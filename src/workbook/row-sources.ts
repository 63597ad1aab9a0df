import { fieldByKey, type Field, type Purpose, type TableName } from '../plan/fields';
import { columnLetters, fixedCell, quoted, sheetPrefix } from './address';
import { limitExpression } from './limit-expression';
import type { LimitRow } from './limit-rows';
import { OWN_KEYS, type OwnKey } from './own-columns';
import type { ColumnUse, RecognisedTable } from './tables';

/** The tables a channel row draws on. */
export interface PlanTables {
  readonly channels: RecognisedTable;
  readonly sensors?: RecognisedTable;
  readonly mounts?: RecognisedTable;
  readonly cables?: RecognisedTable;
  readonly inputs?: RecognisedTable;
  readonly limits?: RecognisedTable;
  readonly limitRows?: readonly LimitRow[];
}
export type LookupTable = 'sensors' | 'mounts' | 'cables' | 'inputs';

/** Writes the expressions by which a row reaches its data, with a mark for its number. Formulas are en-US A1. */
export interface RowSources {
  /** The channel row's cell in the field's documented unit, or undefined when no column holds it. */
  channel(key: string): string | undefined;
  /** The looked-up property in its documented unit. */
  lookup(table: LookupTable, key: string): string | undefined;
  /** 1-based line of the row's item in its list. */
  line(table: LookupTable): string | undefined;
  /** Another of our own cells in this row. */
  own(key: OwnKey): string;
  /**
   * A limit's bound in its documented unit: a cell of the limits sheet, chosen by the row's purpose and structure part, or
   * the default written out. With a purpose given, that one counts and not the row's.
   */
  limit(limit: LimitRow['limit'], bound: 'pass' | 'warn', byDefault: number, purpose?: Purpose): string;
}

export const LINE_KEYS: Readonly<Record<LookupTable, OwnKey>> = {
  sensors: 'sensorLine',
  mounts: 'mountLine',
  cables: 'cableLine',
  inputs: 'inputLine',
};
const NAME_KEYS: Readonly<Record<LookupTable, string>> = {
  sensors: 'sensor',
  mounts: 'mount',
  cables: 'cable',
  inputs: 'input',
};

/** Wraps a cell whose heading states another unit or statistic than the field's, so that nothing is assumed silently. */
const inFieldUnit = (expression: string, use: ColumnUse, field: Field): string => {
  if (field.kind !== 'quantity' || field.unit === undefined) return expression;
  if (field.statistic && use.statistic && use.statistic !== field.statistic)
    return `${expression}&${quoted(` ${use.unitText ?? use.unit ?? field.unit} ${use.statistic}`)}`;
  const unit = use.unitText ?? use.unit;
  return unit === undefined || unit === field.unit
    ? expression
    : `CHAN.CONVERT(${expression},${quoted(unit)},${quoted(field.unit)})`;
};

/** More open cells than this make the whole column a question. */
const MOST_HELD = 8;
/** Nothing from cells that can mean two things. A mark behind the text keeps hosts from comparing it as a number. */
const withoutHeld = (expression: string, { held }: ColumnUse): string => {
  if (!held) return expression;
  if (held.size > MOST_HELD) return 'NA()';
  return [...held.keys()].reduce<string>((rest, cell) => {
    const isHeld = typeof cell === 'number' ? `${expression}=${cell}` : `${expression}&"|"=${quoted(`${cell}|`)}`;
    return `IF(${isHeld},NA(),${rest})`;
  }, expression);
};

const columnRange = (table: RecognisedTable, column: number): string =>
  `${sheetPrefix(table.sheet)}${fixedCell(table.firstRow, column)}:${fixedCell(table.lastRow, column)}`;

const matched = (wanted: string, list: string): string => `MATCH(${wanted},${list},0)`;

/** What may name a piece: the cell of the type, or where that is blank the one of the serial number. */
const pieceCell = (typed: string | undefined, serial: string | undefined): string => {
  if (typed === undefined || serial === undefined) return `TRIM(${typed ?? serial})`;
  return `TRIM(IF(TRIM(${typed})="",${serial},${typed}))`;
};

/**
 * The first line of a piece's type, where no line has the row's own type. A serial number may stand as a text here and as
 * a number there, but then with the same digits.
 */
const lineOfPiece = (byName: string | undefined, piece: string, names: string, serials: string): string => {
  const asNumber = `IF(VALUE(${piece})&""=${piece},${matched(`VALUE(${piece})`, serials)},NA())`;
  const line = `IFERROR(${matched(piece, serials)},IFERROR(${asNumber},NA()))`;
  const ofType = matched(`TRIM(INDEX(${names},${line}))`, names);
  return byName === undefined ? ofType : `IFERROR(${byName},${ofType})`;
};

/** Stands for the row's number in a formula until it is known. */
export const ROW_NUMBER = '\uE000';

export const rowSources = (tables: PlanTables, ownColumn: number): RowSources => {
  const own = (key: OwnKey): string => `$${columnLetters(ownColumn + OWN_KEYS.indexOf(key))}${ROW_NUMBER}`;
  const use = (table: TableName, key: string): ColumnUse | undefined => tables[table]?.columns.get(key);
  const rowCell = (found: ColumnUse): string => `$${columnLetters(found.column)}${ROW_NUMBER}`;
  return {
    own,
    channel(key) {
      const found = use('channels', key);
      const { part } = tables.channels;
      if (!found && key === 'group' && part !== undefined) return quoted(part);
      return found && inFieldUnit(withoutHeld(rowCell(found), found), found, fieldByKey('channels', key));
    },
    lookup(name, key) {
      const table = tables[name];
      const found = use(name, key);
      if (!table || !found) return undefined;
      return inFieldUnit(
        withoutHeld(`INDEX(${columnRange(table, found.column)},${own(LINE_KEYS[name])})`, found),
        found,
        fieldByKey(name, key),
      );
    },
    line(name) {
      const table = tables[name];
      const names = use(name, NAME_KEYS[name]);
      const typed = use('channels', NAME_KEYS[name]);
      const serials = name === 'sensors' ? use(name, 'serial') : undefined;
      if (!table || !names) return undefined;
      const list = columnRange(table, names.column);
      const byName = typed && matched(`TRIM(${rowCell(typed)})`, list);
      const serial = serials && use('channels', 'serial');
      if (!serials || !(typed ?? serial)) return byName;
      return lineOfPiece(byName, pieceCell(typed && rowCell(typed), serial && rowCell(serial)), list, columnRange(table, serials.column)); // prettier-ignore
    },
    limit: limitExpression(tables, rowCell),
  };
};
