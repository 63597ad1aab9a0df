import type { RangeAddress } from '../../../src/workbook/port';
import { refuse } from './fake-client';

export interface FakeCell {
  value: number | string | boolean;
  formula?: string;
  type: 'Double' | 'String' | 'Boolean' | 'Error';
}
export interface FakeLook {
  bold?: boolean;
  ink?: string;
  ground?: string;
  numberFormat?: string;
  align?: string;
  vertical?: string;
  hairline?: string;
  wrap?: boolean;
  isStruck?: boolean;
}
export interface FakeRule {
  id: number;
  type: string;
  range: RangeAddress;
  formula: string;
  ink?: string;
  ground?: string;
}
export interface FakeDrawing {
  type: 'Chart' | 'Image' | 'GeometricShape';
  name: string;
  chart?: string;
  png?: string;
  looks: {
    left?: number;
    top?: number;
    width?: number;
    height?: number;
    title?: string;
    valueTitle?: string;
    words?: string;
  };
  series: { name?: string; values?: RangeAddress; categories?: RangeAddress; colour?: string }[];
}
export interface FakeSheet {
  id: string;
  name: string;
  visibility: 'Visible' | 'Hidden' | 'VeryHidden';
  isProtected: boolean;
  cells: Record<string, FakeCell>;
  looks: Record<string, FakeLook>;
  widths: Record<number, number>;
  tables: { name: string; range: RangeAddress }[];
  merged: RangeAddress[];
  hiddenRows: number[];
  notes: { row: number; column: number; content: string; author?: string }[];
  rules: FakeRule[];
  drawings: FakeDrawing[];
  hasGridlines: boolean;
  tabColour?: string;
  print: Record<string, unknown>;
}
export interface FakeState {
  sheets: FakeSheet[];
  active: string;
  selected?: { sheet: string; range: RangeAddress };
  isStructureProtected: boolean;
  settings: Record<string, string>;
  nextRule: number;
}

/** Excel specifications and limits. */
const ROWS = 1_048_576;
const COLUMNS = 16_384;

export const key = (row: number, column: number): string => `${row},${column}`;
const placeOfKey = (text: string): [number, number] => text.split(',').map(Number) as [number, number];

export const blankSheet = (name: string, id = `{${name}}`): FakeSheet => ({
  id,
  name,
  visibility: 'Visible',
  isProtected: false,
  cells: {},
  looks: {},
  widths: {},
  tables: [],
  merged: [],
  hiddenRows: [],
  notes: [],
  rules: [],
  drawings: [],
  hasGridlines: true,
  print: {},
});

export const checkRange = (range: RangeAddress): RangeAddress => {
  const { row, column, rows, columns } = range;
  const isWhole = [row, column, rows, columns].every(Number.isInteger);
  if (!isWhole || row < 0 || column < 0 || rows < 1 || columns < 1 || row + rows > ROWS || column + columns > COLUMNS)
    refuse('InvalidArgument', 'The argument is invalid or missing or has an incorrect format.');
  return range;
};

/** "B2:C4", "$B$2", "B:B" or "2:3", 1-based as people write it. */
export const rangeOfAddress = (address: string): RangeAddress => {
  const bare = address.replaceAll('$', '').replace(/^.*!/, '');
  const columnOf = (letters: string) => [...letters].reduce((n, c) => n * 26 + c.charCodeAt(0) - 64, 0) - 1;
  const [, c1, r1, c2 = c1, r2 = r1] = /^([A-Z]*)(\d*)(?::([A-Z]*)(\d*))?$/i.exec(bare) ?? [];
  if (c1 === undefined || (c1 === '' && r1 === '')) refuse('InvalidArgument', `not an address: ${address}`);
  const [left, right] = c1 === '' ? [0, COLUMNS - 1] : [columnOf(c1!.toUpperCase()), columnOf(c2!.toUpperCase())];
  const [top, bottom] = r1 === '' ? [0, ROWS - 1] : [Number(r1) - 1, Number(r2) - 1];
  return checkRange({ row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 });
};

/** What Excel makes of an entry, as if it had been typed; undefined leaves the cell alone, null clears it. */
export const cellOfEntry = (entry: unknown): FakeCell | null | undefined => {
  if (entry === null || entry === undefined) return undefined;
  if (entry === '') return null;
  if (typeof entry === 'number') return { value: entry, type: 'Double' };
  if (typeof entry === 'boolean') return { value: entry, type: 'Boolean' };
  const text = String(entry);
  if (text.startsWith("'")) return { value: text.slice(1), type: 'String' };
  if (/^[=+@-]/.test(text) && Number.isNaN(Number(text))) {
    if (!text.startsWith('=')) refuse('InvalidArgument', `Excel reads ${text} as a formula`);
    if (text.length > 8192) refuse('FormulaLengthExceedsLimit');
    return { value: 0, formula: text, type: 'Double' };
  }
  if (text.length > 32767) refuse('InvalidArgument', 'the text is too long');
  if (/^(true|false)$/i.test(text)) return { value: /^true$/i.test(text), type: 'Boolean' };
  if (/^\d{1,2}[/.-]\d{1,2}([/.-]\d{2,4})?$/.test(text)) return { value: 45_000, type: 'Double' };
  const number = Number(text.replace(/%$/, ''));
  if (text.trim() !== '' && !Number.isNaN(number)) return { value: number, type: 'Double' };
  return { value: text, type: 'String' };
};

export const usedRange = (sheet: FakeSheet): RangeAddress | undefined => {
  const places = Object.keys(sheet.cells).map(placeOfKey);
  if (places.length === 0) return undefined;
  const extent = (k: 0 | 1) => places.reduce(([a, b], p) => [Math.min(a, p[k]), Math.max(b, p[k])], [Infinity, -1]);
  const [top, bottom] = extent(0) as [number, number];
  const [left, right] = extent(1) as [number, number];
  return { row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 };
};

export const eachCell = (range: RangeAddress, visit: (row: number, column: number) => void): void => {
  for (let row = range.row; row < range.row + range.rows; row++)
    for (let column = range.column; column < range.column + range.columns; column++) visit(row, column);
};

export const matrix = <T>(range: RangeAddress, of: (row: number, column: number) => T): T[][] =>
  Array.from({ length: range.rows }, (_r, i) =>
    Array.from({ length: range.columns }, (_c, k) => of(range.row + i, range.column + k)),
  );

export const isWithin = (row: number, column: number, range: RangeAddress): boolean =>
  row >= range.row && row < range.row + range.rows && column >= range.column && column < range.column + range.columns;
