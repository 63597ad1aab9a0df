import { isSameHeld, valueText } from './compare-values';
import { fieldsOf } from './fields';
import type { FieldValue } from './item-fields';
import { joinName } from './join-name';
import type { Piece, SensorType } from './model';
import { serialsIn } from './pieces';
import type { RowReading } from './table-row';

export type ReportRow = (row: RowReading, key: string, read: string, expected: string) => void;

/** A certificate says these of each piece; they may differ within a type. */
const OF_THE_PIECE = new Set([
  'sensor',
  'description',
  'sensitivity',
  'chargeSensitivity',
  'calibrationTemperature',
  'quantity',
  'calibrationDue',
  'serial',
]);
const OF_THE_TYPE = fieldsOf('sensors').filter(({ key }) => !OF_THE_PIECE.has(key));

interface TypeRows {
  readonly first: RowReading;
  readonly pieces: Piece[];
  /** As far as the list says how many there are. */
  quantity?: number;
}

/** Types and their pieces. The first row of a type says its properties, as the formulas take them. */
class SensorList {
  private readonly types = new Map<string, TypeRows>();
  private readonly seen = new Map<string, Piece>();

  constructor(private readonly report: ReportRow) {}

  take(row: RowReading, line: number): void {
    const name = row.values['sensor'] as string | undefined;
    if (name === undefined) return this.report(row, 'sensor', '', 'a name');
    const known = this.types.get(joinName(name));
    const serials = serialsIn(row.values['serial'] as string | undefined);
    if (known && serials.length === 0 && known.pieces.length === 0)
      return this.report(row, 'sensor', name, 'a name that no row above has; the first row is used');
    const type: TypeRows = known ?? { first: row, pieces: [] };
    if (known) this.compare(known.first, row);
    else this.types.set(joinName(name), type);
    const pieces = this.piecesOf(row, line, type.first.values['sensor'] as string, serials);
    type.pieces.push(...pieces);
    const isRepeated = serials.length > 0 && pieces.length === 0;
    const count = (row.values['quantity'] as number | undefined) ?? (serials.length > 0 ? pieces.length : undefined);
    if (count !== undefined && !isRepeated) type.quantity = (type.quantity ?? 0) + Math.max(count, pieces.length);
  }

  private piecesOf(row: RowReading, line: number, type: string, serials: readonly string[]): Piece[] {
    const number = (key: string) => row.values[key] as number | undefined;
    return serials.flatMap((serial) => {
      const key = joinName(serial);
      const before = this.seen.get(key);
      if (before) this.report(row, 'serial', serial, `a serial number that no row above has (row ${before.line}, ${before.type})`); // prettier-ignore
      if (before && joinName(before.type) === joinName(type)) return [];
      const [calibrationDue, sensitivity, chargeSensitivity] = ['calibrationDue', 'sensitivity', 'chargeSensitivity'].map(number); // prettier-ignore
      const piece: Piece = {
        serial,
        type,
        line,
        ...(calibrationDue !== undefined && { calibrationDue }),
        ...(sensitivity !== undefined && { sensitivity }),
        ...(chargeSensitivity !== undefined && { chargeSensitivity }),
        ...(serials.length > 1 && { sharesCell: true }),
      };
      if (!before) this.seen.set(key, piece);
      return [piece];
    });
  }

  /** What two pieces of one type cannot differ in. */
  private compare(first: RowReading, row: RowReading): void {
    for (const { key } of OF_THE_TYPE) {
      const [taken, own] = [first.values[key], row.values[key]] as (FieldValue | undefined)[];
      if (taken === undefined || own === undefined) continue;
      if (isSameHeld(key, { value: taken, isUnread: false }, { value: own, isUnread: false })) continue;
      const expected = `${valueText('sensors', key, taken)} as in row ${first.at}, the first of this type, which is used`;
      this.report(row, key, valueText('sensors', key, own) ?? '', expected);
    }
  }

  get list(): ReadonlyMap<string, SensorType> {
    return new Map([...this.types].map(([key, rows]) => [key, typeOf(rows)]));
  }
}

const typeOf = ({ first, pieces, quantity }: TypeRows): SensorType => {
  const { unread, values } = first;
  const own = unread.filter((key) => key !== 'serial').map((key) => (key === 'sensor' ? 'name' : key));
  const held = {
    ...Object.fromEntries(Object.entries(values).filter(([key]) => key !== 'serial' && key !== 'sensor')),
    ...(own.length > 0 && { unread: own }),
    name: values['sensor'] as string,
  };
  if (pieces.length === 0) return held;
  const dues = pieces.flatMap(({ calibrationDue }) => calibrationDue ?? []);
  return {
    ...held,
    quantity,
    ...(dues.length > 0 && { calibrationDue: dues.reduce((a, b) => Math.min(a, b)) }),
    pieces,
  };
};

/** The sensor types of these rows by name; a list with one row per piece makes one type of the rows that name it. */
export const sensorList = (rows: readonly RowReading[], report: ReportRow): ReadonlyMap<string, SensorType> => {
  const list = new SensorList(report);
  rows.forEach((row) => list.take(row, row.at));
  return list.list;
};
