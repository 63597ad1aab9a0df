import type { Curve } from '../../core/curve';
import type { Language } from '../../core/language';
import { formatCurve, formatQuantity } from '../../core/text/format';
import { readQuantity } from '../../core/text/quantity';
import { fieldsOf, type Field } from '../../plan/fields';
import { joinName } from '../../plan/join-name';
import { serialsIn } from '../../plan/pieces';
import type { RowReading } from '../../plan/table-row';
import { fieldTitle } from '../../plan/words/titles';
import { curveOf, statedDeviations } from './deviation';
import { rowsOf, type StockSource } from './stock-source';
import { STOCK_WORDS } from './stock-words';

/** A sensor type with all its pieces; values in SI by field key. */
export interface StockType {
  readonly name: string;
  readonly values: Readonly<Record<string, unknown>>;
  /** What could not be read stays as it was written, so that it is not taken for a blank. */
  readonly asWritten: Readonly<Record<string, string>>;
  /** Those with a serial number; `quantity` counts these and all others. */
  readonly pieces: readonly StockPiece[];
}
/** A piece with what is its own: the values of its certificate. */
export interface StockPiece {
  readonly serial: string;
  readonly values: Readonly<Record<string, unknown>>;
}
export interface LaidOutStock {
  readonly types: readonly StockType[];
  readonly notices: readonly string[];
}

/** Common practice, no source: as the plan layer takes a blank. */
const USUAL_CALIBRATION = 23;

/** What a certificate says of each piece. */
const OWN_KEYS = ['calibrationDue', 'sensitivity', 'chargeSensitivity'];

interface Row {
  readonly name: string;
  readonly serials: readonly string[];
  readonly values: Record<string, unknown>;
  readonly asWritten: Record<string, string>;
}

class Layout {
  readonly notices = new Set<string>();
  readonly words;

  constructor(
    private readonly source: StockSource,
    private readonly language: Language,
  ) {
    this.words = STOCK_WORDS[language];
  }

  rows(): Row[] {
    const rows = rowsOf(this.source);
    return rows.flatMap((row) => {
      const name = row.values['sensor'] as string | undefined;
      if (name !== undefined) return [this.rowOf(name, row)];
      this.notices.add(this.words.noName(row.at));
      return [];
    });
  }

  private rowOf(name: string, { at, values: read, unread }: RowReading): Row {
    const { cells, temperatures, table } = this.source;
    const row = at - 1;
    const values: Record<string, unknown> = { ...read };
    const asWritten: Record<string, string> = {};
    for (const key of unread) {
      const cell = cells.at(row, table.columns.get(key)!.column);
      if (!this.takeStated(name, key, cell, values))
        asWritten[key] = typeof cell === 'object' ? (cell?.error ?? '') : String(cell);
    }
    const curve = curveOf(temperatures, cells, row);
    if (curve) values['deviation'] = curve;
    this.takeVolts(name, row, values);
    return { name, values, asWritten, serials: serialsIn(read['serial'] as string | undefined) };
  }

  /** "±5 % at 50 °C" in a column of deviations or coefficients. */
  private takeStated(name: string, key: string, cell: unknown, values: Record<string, unknown>): boolean {
    if (key !== 'deviation' && key !== 'coefficient') return false;
    const stated = statedDeviations(typeof cell === 'string' ? cell : null);
    const from = (values['calibrationTemperature'] as number | undefined) ?? USUAL_CALIBRATION;
    if (!stated || stated.some(({ at }) => at === from)) return false;
    const signed = stated.filter(({ isUnsigned }) => !isUnsigned);
    if (signed.length === stated.length && stated.length > 1) {
      const points = [...signed, { at: from, deviation: 0 }].sort((a, b) => a.at - b.at);
      values['deviation'] = { x: points.map(({ at }) => at), y: points.map(({ deviation }) => deviation) };
      return true;
    }
    const isSigned = signed.length === stated.length;
    const slopes = stated.map(({ at, deviation }) => deviation / (at - from));
    values['coefficient'] = isSigned ? slopes[0] : Math.max(...slopes.map(Math.abs));
    values['coefficientSign'] = isSigned ? 'signed' : 'unsigned';
    this.notices.add(this.words.stated(name, String(cell), isSigned ? 'signed' : 'unsigned'));
    return true;
  }

  private takeVolts(name: string, row: number, values: Record<string, unknown>): void {
    const { fullScaleVolts, cells } = this.source;
    const sensitivity = values['sensitivity'] as number | undefined;
    if (!fullScaleVolts || !sensitivity) return;
    const cell = cells.at(row, fullScaleVolts.column);
    const text = typeof cell === 'number' ? `${cell} ${fullScaleVolts.unitText}` : typeof cell === 'string' ? cell : '';
    const volts = readQuantity(text.replace(/^(?:±|\+\/-)\s*/, ''), 'V');
    if (!volts.ok) return;
    values['fullScale'] = volts.value.si / sensitivity;
    this.notices.add(this.words.volts(name));
  }

  types(rows: readonly Row[]): StockType[] {
    const groups = new Map<string, Row[]>();
    for (const row of rows) {
      const key = joinName(row.name);
      groups.set(key, [...(groups.get(key) ?? []), row]);
    }
    if (groups.size < rows.length) this.notices.add(this.words.pieces(groups.size, rows.length));
    return [...groups.values()].map((own) => this.typeOf(own));
  }

  private typeOf(all: readonly Row[]): StockType {
    const own = this.once(all);
    const { name } = own[0]!;
    const values: Record<string, unknown> = {};
    const asWritten: Record<string, string> = {};
    for (const field of fieldsOf('sensors')) {
      const { key } = field;
      const given = own.flatMap((piece) => (piece.values[key] === undefined ? [] : [piece.values[key]]));
      const unread = own.find((piece) => piece.asWritten[key] !== undefined)?.asWritten[key];
      if (key === 'quantity' || key === 'sensor' || key === 'serial') continue;
      if (key === 'calibrationDue' && given.length > 0) values[key] = Math.min(...(given as number[]));
      else if (given.length > 0) values[key] = given[0];
      else if (unread !== undefined) asWritten[key] = unread;
      if (key !== 'calibrationDue' && key !== 'description') this.tellDifferences(name, field, given);
    }
    const pieces = own.flatMap(({ serials, values: held }) => serials.map((serial) => ({ serial, values: Object.fromEntries(OWN_KEYS.map((key) => [key, held[key]])) }))); // prettier-ignore
    const counts = own.map(({ serials, values: held }) => (held['quantity'] as number | undefined) ?? serials.length);
    const isCounted = own.some(({ serials, values: held }) => held['quantity'] !== undefined || serials.length > 0);
    const sum = counts.reduce((total, count) => total + count, 0);
    if (isCounted || own.length > 1) values['quantity'] = isCounted ? Math.max(sum, pieces.length) : own.length;
    if (own.length > 1 && !isCounted) this.notices.add(this.words.rowsAsPieces(name, own.length));
    return { name, values, asWritten, pieces };
  }

  /** A piece that stands in the list twice is one piece. */
  private once(rows: readonly Row[]): readonly Row[] {
    const seen = new Set<string>();
    const isNew = (serial: string): boolean => {
      const key = joinName(serial);
      if (seen.has(key)) this.notices.add(this.words.twice(serial));
      return !seen.has(key) && seen.add(key).has(key);
    };
    return rows.flatMap((row) => {
      const serials = row.serials.filter(isNew);
      return row.serials.length > 0 && serials.length === 0 ? [] : [{ ...row, serials }];
    });
  }

  private tellDifferences(name: string, field: Field, given: readonly unknown[]): void {
    const texts = [...new Set(given.map((value) => shown(field, value)))];
    if (texts.length < 2) return;
    const numbers = given.filter((value): value is number => typeof value === 'number');
    const ends =
      numbers.length === given.length
        ? [Math.min(...numbers), Math.max(...numbers)].map((value) => shown(field, value)).join(' … ')
        : texts.slice(0, 3).join(' / ');
    this.notices.add(this.words.differs(name, fieldTitle('sensors', field.key, this.language), ends));
  }
}

const shown = ({ unit, xUnit }: Field, value: unknown): string => {
  if (typeof value === 'number') return formatQuantity(value, unit ?? '1', 4);
  return typeof value === 'object' ? formatCurve(value as Curve, xUnit ?? '1', unit ?? '1', 4) : String(value);
};

/** Sensor types with quantities, from a list of types or of single pieces, upright or turned. */
export const layOutStock = (source: StockSource, language: Language = 'en'): LaidOutStock => {
  const layout = new Layout(source, language);
  const types = layout.types(layout.rows());
  const { words } = layout;
  return {
    types,
    notices: [
      ...(source.isTurned ? [words.turned] : []),
      ...(source.temperatures.length > 0 ? [words.temperatures(source.temperatures.length)] : []),
      ...layout.notices,
    ],
  };
};
