import type { Curve } from '../../core/curve';
import type { Language } from '../../core/language';
import { formatCurve } from '../../core/text/format';
import { fromSi } from '../../core/units';
import { fieldsOf, type Field } from '../../plan/fields';
import type { Change, SheetContent } from '../port';
import { COPY_WORDS } from '../share/told-words';
import { headingOf } from '../template';
import type { LaidOutStock, StockType } from './lay-out';
import { STOCK_WORDS } from './stock-words';

/** Name of the sheet that is ours; the setting says so, and where its rows came from. */
export const STOCK_SHEET = 'Sensor stock';
export const STOCK_SETTING = 'channelwright.stock';
/** 0-based row of its headings. */
export const STOCK_HEADER = 3;

const DIGITS = 12;

/** A line of the sheet: a piece, those of a type that have no number, or a type. */
interface Line extends Pick<StockType, 'name' | 'values' | 'asWritten'> {
  readonly serial?: string;
}

/** With serial numbers one line per piece, the properties in each; else one per type. */
const linesOf = ({ name, values, asWritten, pieces }: StockType): readonly Line[] => {
  if (pieces.length === 0) return [{ name, values, asWritten }];
  const left = ((values['quantity'] as number | undefined) ?? 0) - pieces.length;
  return [
    ...pieces.map((piece) => ({ name, asWritten, serial: piece.serial, values: { ...values, ...piece.values, quantity: undefined } })), // prettier-ignore
    ...(left > 0 ? [{ name, asWritten, values: { ...values, quantity: left } }] : []),
  ];
};

const cellOf = ({ key, kind, unit = '1', xUnit = '1' }: Field, { name, values, asWritten, serial }: Line) => {
  if (key === 'sensor') return inert(name);
  if (key === 'serial') return serial === undefined ? null : inert(serial);
  const value = values[key];
  if (value === undefined) return asWritten[key] === undefined ? null : inert(asWritten[key]);
  if (kind === 'date') return value as number;
  if (typeof value === 'number') return Number(fromSi(value, unit).toPrecision(DIGITS));
  return typeof value === 'object' ? formatCurve(value as Curve, xUnit, unit, DIGITS) : inert(String(value));
};

/** A text with which a formula would begin cannot be expressed as a constant. */
const inert = (text: string): string => text.replace(/^[=]+/, '');

/** The laid out list as a sheet: a title, how it came about, headings with units, one row per type or piece. */
export const stockCells = (stock: LaidOutStock, from: string, language: Language) => {
  const words = STOCK_WORDS[language];
  const lines = stock.types.flatMap(linesOf);
  const isHeld = ({ key }: Field) =>
    key === 'sensor' ||
    lines.some(({ values, asWritten, serial }) => (key === 'serial' ? serial : (values[key] ?? asWritten[key])) !== undefined); // prettier-ignore
  const fields = fieldsOf('sensors').filter(isHeld);
  const padded = (text: string | null) => [text, ...Array.from({ length: fields.length - 1 }, () => null)];
  const cells: (string | number | null)[][] = [
    padded(words.title(from)),
    padded(words.how),
    padded(null),
    fields.map(headingOf),
    ...lines.map((line) => fields.map((field) => cellOf(field, line))),
  ];
  return { cells, fields };
};

/** All that is written to make the sheet, or to make it anew over `before`. */
export const stockChanges = (
  stock: LaidOutStock,
  from: string,
  language: Language,
  before: SheetContent | undefined,
): readonly Change[] => {
  const sheet = STOCK_SHEET;
  const { cells, fields } = stockCells(stock, from, language);
  const width = cells[0]!.length;
  const old = before && { row: 0, column: 0, rows: before.row + before.values.length + 1, columns: before.column + Math.max(1, ...before.values.map((line) => line.length)) }; // prettier-ignore
  const due = fields.findIndex(({ kind }) => kind === 'date');
  return [
    ...(before ? [] : [{ kind: 'sheet', name: sheet, reading: { foot: COPY_WORDS[language].page } } as const]),
    ...(old ? [{ kind: 'clear', sheet, range: old } as const] : []),
    { kind: 'cells', sheet, row: 0, column: 0, cells },
    { kind: 'look', sheet, range: { row: 0, column: 0, rows: 1, columns: 1 }, look: { bold: true, ink: '#0f4c4a' } },
    { kind: 'look', sheet, range: { row: 1, column: 0, rows: 1, columns: 1 }, look: { ink: '#6b6f6e' } },
    {
      kind: 'look',
      sheet,
      range: { row: STOCK_HEADER, column: 0, rows: 1, columns: width },
      look: { bold: true, ink: '#0f4c4a', ground: '#e6efee', wrap: true },
    },
    ...(due < 0
      ? []
      : [
          {
            kind: 'look',
            sheet,
            range: { row: STOCK_HEADER + 1, column: due, rows: cells.length - STOCK_HEADER - 1, columns: 1 },
            look: { numberFormat: 'yyyy-mm-dd' },
          } as const,
        ]),
    { kind: 'width', sheet, column: 0, columns: 1, characters: 22 },
    { kind: 'width', sheet, column: 1, columns: Math.max(1, width - 1), characters: 14 },
  ];
};
