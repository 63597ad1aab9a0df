import type { IBorderStyleData, IStyleData, Nullable } from '@univerjs/core';
import type { BorderSide, BorderStyle, CellStyle } from 'hucre';

const HORIZONTAL: readonly (undefined | 'left' | 'center' | 'right')[] = [undefined, 'left', 'center', 'right'];
const VERTICAL: readonly (undefined | 'top' | 'center' | 'bottom')[] = [undefined, 'top', 'center', 'bottom'];
const WRAP = 3;
const BORDERS: readonly (BorderSide['style'] | undefined)[] = [
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

/** "#0f5c59" or "rgb(15, 92, 89)" as the file format writes a colour. */
const colour = (given: Nullable<{ rgb?: Nullable<string> }>): { rgb: string } | undefined => {
  const text = given?.rgb ?? '';
  const hex = /^#?([0-9a-f]{6})$/i.exec(text)?.[1];
  if (hex) return { rgb: hex.toUpperCase() };
  const parts = /^rgba?\((\d+),\s*(\d+),\s*(\d+)/.exec(text)?.slice(1);
  return (
    parts && {
      rgb: parts
        .map((part) => Number(part).toString(16).padStart(2, '0'))
        .join('')
        .toUpperCase(),
    }
  );
};

const side = (from: Nullable<IBorderStyleData>): BorderSide | undefined => {
  const style = from ? BORDERS[from.s] : undefined;
  const color = colour(from?.cl);
  return style && { style, ...(color && { color }) };
};

const border = ({ bd }: IStyleData): BorderStyle | undefined => {
  const all = { top: side(bd?.t), right: side(bd?.r), bottom: side(bd?.b), left: side(bd?.l) };
  const drawn = Object.entries(all).filter(([, line]) => line);
  return drawn.length === 0 ? undefined : (Object.fromEntries(drawn) as BorderStyle);
};

/** The fonts that the page falls back on are the page's, not the workbook's. */
const family = (ff: Nullable<string>): string | undefined => ff?.split(',')[0]?.trim() || undefined;

/** A look of the grid as a new file keeps it. */
export const styleToFile = (style: IStyleData, standard: IStyleData): CellStyle => {
  const ink = colour(style.cl);
  const ground = colour(style.bg);
  const lines = border(style);
  const name = family(style.ff ?? standard.ff);
  const horizontal = HORIZONTAL[Number(style.ht ?? 0)];
  const vertical = VERTICAL[Number(style.vt ?? 0)];
  const pattern = style.n?.pattern;
  const alignment = {
    ...(horizontal && { horizontal }),
    ...(vertical && { vertical }),
    ...(style.tb === WRAP && { wrapText: true }),
  };
  return {
    font: {
      ...(name && { name }),
      size: style.fs ?? standard.fs ?? 11,
      ...(style.bl === 1 && { bold: true }),
      ...(style.it === 1 && { italic: true }),
      ...(style.st?.s === 1 && { strikethrough: true }),
      ...(style.ul?.s === 1 && { underline: true }),
      ...(style.st?.s === 1 && { strikethrough: true }),
      ...(ink && { color: ink }),
    },
    ...(ground && { fill: { type: 'pattern' as const, pattern: 'solid' as const, fgColor: ground } }),
    ...(lines && { border: lines }),
    ...(Object.keys(alignment).length > 0 && { alignment }),
    ...(pattern && { numFmt: pattern }),
  };
};
