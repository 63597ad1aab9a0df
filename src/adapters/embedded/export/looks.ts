import type { IBorderStyleData, IStyleData, Nullable } from '@univerjs/core';
import type { BorderStyle, CellStyle } from 'hucre';
import type { BorderLine, Borders, LineStyle, WholeLook } from '../../../workbook/whole-look';

const HORIZONTAL: readonly (undefined | 'left' | 'center' | 'right')[] = [undefined, 'left', 'center', 'right'];
const VERTICAL: readonly (undefined | 'top' | 'center' | 'bottom')[] = [undefined, 'top', 'center', 'bottom'];
const WRAP = 3;
const BORDERS: readonly (LineStyle | undefined)[] = [
  undefined,
  'thin',
  'hair',
  'dotted',
  'dashed',
  'dashDot',
  'dashDotDot',
  'double',
  'medium',
  'mediumDashed',
  'mediumDashDot',
  'mediumDashDotDot',
  'slantDashDot',
  'thick',
];

/** "#0f5c59" or "rgb(15, 92, 89)" as the former. */
export const colourOf = (given: Nullable<{ rgb?: Nullable<string> }>): string | undefined => {
  const text = given?.rgb ?? '';
  const hex = /^#?([0-9a-f]{6})$/i.exec(text)?.[1];
  if (hex) return `#${hex}`;
  const parts = /^rgba?\((\d+),\s*(\d+),\s*(\d+)/.exec(text)?.slice(1);
  return parts && `#${parts.map((part) => Number(part).toString(16).padStart(2, '0')).join('')}`;
};

const line = (from: Nullable<IBorderStyleData>): BorderLine | undefined => {
  const style = from ? BORDERS[from.s] : undefined;
  const colour = colourOf(from?.cl);
  return style && { style, ...(colour && { colour }) };
};

const bordersOf = ({ bd }: IStyleData): Borders | undefined => {
  const all = { top: line(bd?.t), right: line(bd?.r), bottom: line(bd?.b), left: line(bd?.l) };
  const drawn = Object.entries(all).filter(([, each]) => each);
  return drawn.length === 0 ? undefined : (Object.fromEntries(drawn) as Borders);
};

/** The fonts that the page falls back on are the page's, not the workbook's. */
const family = (ff: Nullable<string>): string | undefined => ff?.split(',')[0]?.trim() || undefined;

/** A look of the grid; what the grid's cell leaves to its surroundings is left open. */
export const lookOf = (style: IStyleData): WholeLook => {
  const ink = colourOf(style.cl);
  const ground = colourOf(style.bg);
  const borders = bordersOf(style);
  const font = family(style.ff);
  const align = HORIZONTAL[Number(style.ht ?? 0)];
  const vertical = VERTICAL[Number(style.vt ?? 0)];
  const pattern = style.n?.pattern;
  return {
    ...(font && { font }),
    ...(style.fs && { points: style.fs }),
    ...(style.bl === 1 && { bold: true }),
    ...(style.it === 1 && { italic: true }),
    ...(style.ul?.s === 1 && { underline: true }),
    ...(style.st?.s === 1 && { strike: true }),
    ...(ink && { ink }),
    ...(ground && { ground }),
    ...(borders && { borders }),
    ...(align && { align }),
    ...(vertical && { vertical }),
    ...(style.tb === WRAP && { wrap: true }),
    ...(pattern && { numberFormat: pattern }),
  };
};

const rgb = (colour: string) => ({ rgb: colour.slice(1).toUpperCase() });

const borderToFile = (borders: Borders): BorderStyle =>
  Object.fromEntries(
    Object.entries(borders).map(([side, { style, colour }]) => [
      side,
      { style, ...(colour && { color: rgb(colour) }) },
    ]),
  );

/** The same as a new workbook keeps it. */
export const styleToFile = (style: IStyleData, standard: IStyleData): CellStyle => {
  const { font = family(standard.ff), points, ink, ground, borders, ...look } = lookOf(style);
  const alignment = {
    ...(look.align && { horizontal: look.align }),
    ...(look.vertical && { vertical: look.vertical }),
    ...(look.wrap && { wrapText: true }),
  };
  return {
    font: {
      ...(font && { name: font }),
      size: points ?? standard.fs ?? 11,
      ...(look.bold && { bold: true }),
      ...(look.italic && { italic: true }),
      ...(look.underline && { underline: true }),
      ...(look.strike && { strikethrough: true }),
      ...(ink && { color: rgb(ink) }),
    },
    ...(ground && { fill: { type: 'pattern', pattern: 'solid', fgColor: rgb(ground) } }),
    ...(borders && { border: borderToFile(borders) }),
    ...(Object.keys(alignment).length > 0 && { alignment }),
    ...(look.numberFormat && { numFmt: look.numberFormat }),
  };
};
