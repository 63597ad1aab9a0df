import { CellValueType, type ICellData, type Nullable } from '@univerjs/core';
import { ErrorType } from '@univerjs/engine-formula';
import type { Cell } from '../../functions/define';

const ERRORS: ReadonlySet<string> = new Set(Object.values(ErrorType));

const textOf = (cell: ICellData): string | undefined => cell.p?.body?.dataStream.replace(/\r\n$/, '');

/** A cell of the grid's model as every host hands it over, unrounded. */
export const cellFromGrid = (cell: Nullable<ICellData>): Cell => {
  if (!cell) return null;
  const { v, t } = cell;
  if (v === undefined || v === null) return textOf(cell) ?? null;
  if (t === CellValueType.BOOLEAN) return v === 1 || v === true || String(v).toUpperCase() === 'TRUE';
  if (typeof v === 'string') {
    if (ERRORS.has(v)) return { error: v };
    if (t === CellValueType.NUMBER && v !== '' && Number.isFinite(Number(v))) return Number(v);
    return v === '' ? null : v;
  }
  return v;
};

/** A value as the grid's model keeps it. Text keeps its type, whatever it looks like. */
export const cellToGrid = (value: number | string | boolean | null): ICellData => {
  if (value === null) return { v: null, t: null, f: null, si: null, p: null };
  const blank = { f: null, si: null, p: null };
  if (typeof value === 'number') return { ...blank, v: value, t: CellValueType.NUMBER };
  if (typeof value === 'boolean') return { ...blank, v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  if (value.startsWith('=')) return { f: value, v: null, t: null, si: null, p: null };
  return { ...blank, v: value, t: CellValueType.STRING };
};
