import type { CellLook } from './port';

/** Lines by the names that the file format gives them (ECMA-376-1, 18.18.3). */
export type LineStyle =
  | 'thin'
  | 'hair'
  | 'dotted'
  | 'dashed'
  | 'dashDot'
  | 'dashDotDot'
  | 'double'
  | 'medium'
  | 'mediumDashed'
  | 'mediumDashDot'
  | 'mediumDashDotDot'
  | 'slantDashDot'
  | 'thick';
export interface BorderLine {
  readonly style: LineStyle;
  /** "#rrggbb". */
  readonly colour?: string;
}
export const SIDES = ['left', 'right', 'top', 'bottom'] as const;
export type Borders = { readonly [Side in (typeof SIDES)[number]]?: BorderLine };

/** All that can be told of a cell's look, to carry it from one host into a file; null takes away what was there. */
export interface WholeLook extends Omit<CellLook, 'ink' | 'ground' | 'align' | 'vertical'> {
  readonly ink?: string | null;
  readonly ground?: string | null;
  readonly align?: CellLook['align'] | null;
  readonly vertical?: CellLook['vertical'] | null;
  readonly italic?: boolean;
  readonly underline?: boolean;
  readonly strike?: boolean;
  readonly font?: string;
  readonly points?: number;
  readonly borders?: Borders;
}
