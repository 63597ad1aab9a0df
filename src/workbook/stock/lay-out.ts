import type { Curve } from '../../core/curve';
import type { Language } from '../../core/language';
import { formatCurve, formatQuantity } from '../../core/text/format';
import { readQuantity } from '../../core/text/quantity';
import { fieldsOf, type Field } from '../../plan/fields';
import { joinName } from '../../plan/from-tables';
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
  readonly serials: readonly string[];
}
export interface LaidOutStock {
  readonly types: readonly StockType[];
  readonly notices: readonly string[];
}

/** Common practice, no source: as the plan layer takes a blank. */
const USUAL_CALIBRATION = 23;

interface Piece {
  readonly name: string;
  readonly serial?: string;
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

  pieces(): Piece[] {
    const rows = rowsOf(this.source);
    return rows.flatMap((row) => {
      const name = row.values['sensor'] as string | undefined;
      if (name !== undefined) return [this.piece(name, row)];
      this.notices.add(this.words.noName(row.at));
      return [];
    });
  }

  private piece(name: string, { at, values: read, unread }: RowReading): Piece {
    const { cells, serials, temperatures, table } = this.source;
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
    const serial = serials === undefined ? null : cells.at(row, serials);
    return {
      name,
      values,
      asWritten,
      ...(serial !== null && typeof serial !== 'object' && { serial: String(serial) }),
    };
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

  types(pieces: readonly Piece[]): StockType[] {
    const groups = new Map<string, Piece[]>();
    for (const piece of pieces) {
      const key = joinName(piece.name);
      groups.set(key, [...(groups.get(key) ?? []), piece]);
    }
    if (groups.size < pieces.length) this.notices.add(this.words.pieces(groups.size, pieces.length));
    return [...groups.values()].map((own) => this.typeOf(own));
  }

  private typeOf(all: readonly Piece[]): StockType {
    const own = this.once(all);
    const { name } = own[0]!;
    const values: Record<string, unknown> = {};
    const asWritten: Record<string, string> = {};
    for (const field of fieldsOf('sensors')) {
      const { key } = field;
      const given = own.flatMap((piece) => (piece.values[key] === undefined ? [] : [piece.values[key]]));
      const unread = own.find((piece) => piece.asWritten[key] !== undefined)?.asWritten[key];
      if (key === 'quantity' || key === 'sensor') continue;
      if (key === 'calibrationDue' && given.length > 0) values[key] = Math.min(...(given as number[]));
      else if (given.length > 0) values[key] = given[0];
      else if (unread !== undefined) asWritten[key] = unread;
      if (key !== 'calibrationDue' && key !== 'description') this.tellDifferences(name, field, given);
    }
    const serials = own.flatMap(({ serial }) => serial ?? []);
    const counts = own.flatMap(({ values: held }) =>
      held['quantity'] === undefined ? [] : [held['quantity'] as number],
    );
    if (counts.length > 0) values['quantity'] = counts.reduce((sum, count) => sum + count, 0);
    else if (serials.length > 0 || own.length > 1) values['quantity'] = own.length;
    if (own.length > 1 && serials.length === 0 && counts.length === 0)
      this.notices.add(this.words.rowsAsPieces(name, own.length));
    return { name, values, asWritten, serials };
  }

  /** A piece that stands in the list twice is one piece. */
  private once(pieces: readonly Piece[]): readonly Piece[] {
    const seen = new Set<string>();
    return pieces.filter(({ serial }) => {
      const key = serial && joinName(serial);
      if (!key) return true;
      if (seen.has(key)) this.notices.add(this.words.twice(serial));
      return !seen.has(key) && seen.add(key);
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
  const types = layout.types(layout.pieces());
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
