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

const cellOf = ({ key, kind, unit = '1', xUnit = '1' }: Field, { name, values, asWritten }: StockType) => {
  if (key === 'sensor') return inert(name);
  const value = values[key];
  if (value === undefined) return asWritten[key] === undefined ? null : inert(asWritten[key]);
  if (kind === 'date') return value as number;
  if (typeof value === 'number') return Number(fromSi(value, unit).toPrecision(DIGITS));
  return typeof value === 'object' ? formatCurve(value as Curve, xUnit, unit, DIGITS) : inert(String(value));
};

/** A text with which a formula would begin cannot be expressed as a constant. */
const inert = (text: string): string => text.replace(/^[=]+/, '');

/** The laid out list as a sheet: a title, how it came about, headings with units, one row per type. */
export const stockCells = (stock: LaidOutStock, from: string, language: Language) => {
  const words = STOCK_WORDS[language];
  const isHeld = ({ key }: Field) =>
    key === 'sensor' || stock.types.some(({ values, asWritten }) => (values[key] ?? asWritten[key]) !== undefined);
  const fields = fieldsOf('sensors').filter(isHeld);
  const withSerials = stock.types.some(({ serials }) => serials.length > 0);
  const width = fields.length + (withSerials ? 1 : 0);
  const padded = (text: string | null) => [text, ...Array.from({ length: width - 1 }, () => null)];
  const cells: (string | number | null)[][] = [
    padded(words.title(from)),
    padded(words.how),
    padded(null),
    [...fields.map(headingOf), ...(withSerials ? [words.serials] : [])],
    ...stock.types.map((type) => [
      ...fields.map((field) => cellOf(field, type)),
      ...(withSerials ? [inert(type.serials.join(', ')) || null] : []),
    ]),
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
            range: { row: STOCK_HEADER + 1, column: due, rows: stock.types.length, columns: 1 },
            look: { numberFormat: 'yyyy-mm-dd' },
          } as const,
        ]),
    { kind: 'width', sheet, column: 0, columns: 1, characters: 22 },
    { kind: 'width', sheet, column: 1, columns: Math.max(1, width - 1), characters: 14 },
  ];
};
