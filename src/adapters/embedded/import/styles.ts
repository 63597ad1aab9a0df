import type { IStyleData, IBorderData } from '@univerjs/core';
import { resolveThemeColor, type BorderSide, type CellStyle, type Color } from 'hucre';

const HORIZONTAL: Record<string, number> = { left: 1, center: 2, right: 3, centerContinuous: 2 };
const VERTICAL: Record<string, number> = { top: 1, center: 2, bottom: 3 };
const WRAP = 3;
const BORDER: Record<BorderSide['style'], number> = {
  thin: 1,
  hair: 2,
  dotted: 3,
  dashed: 4,
  dashDot: 5,
  dashDotDot: 6,
  double: 7,
  medium: 8,
  mediumDashed: 9,
  mediumDashDot: 10,
  mediumDashDotDot: 11,
  slantDashDot: 12,
  thick: 13,
};
/** ECMA-376-1, 18.8.27, the first 16 entries after the repeated eight. */
const INDEXED = (
  '000000 FFFFFF FF0000 00FF00 0000FF FFFF00 FF00FF 00FFFF 800000 008000 000080 808000 800080 008080 C0C0C0 808080 ' +
  '9999FF 993366 FFFFCC CCFFFF 660066 FF8080 0066CC CCCCFF 000080 FF00FF FFFF00 00FFFF 800080 800000 008080 0000FF ' +
  '00CCFF CCFFFF CCFFCC FFFF99 99CCFF FF99CC CC99FF FFCC99 3366FF 33CCCC 99CC00 FFCC00 FF9900 FF6600 666699 969696 ' +
  '003366 339966 003300 333300 993300 993366 333399 333333'
).split(' ');

export type ColorReader = (color: Color | undefined) => { rgb: string } | undefined;

export const colorReader =
  (theme: readonly string[] | undefined): ColorReader =>
  (color) => {
    if (!color) return undefined;
    if (color.rgb && /^[0-9a-f]{6}$/i.test(color.rgb)) return { rgb: `#${color.rgb}` };
    if (color.theme !== undefined && theme?.length)
      return { rgb: `#${resolveThemeColor([...theme], color.theme, color.tint)}` };
    const indexed =
      color.indexed === undefined ? undefined : INDEXED[color.indexed < 8 ? color.indexed : color.indexed - 8];
    return indexed ? { rgb: `#${indexed}` } : undefined;
  };

const BLACK = { rgb: '#000000' };

const borders = (border: NonNullable<CellStyle['border']>, color: ColorReader): IBorderData => {
  const side = (from: BorderSide | undefined) =>
    from && BORDER[from.style] ? { s: BORDER[from.style], cl: color(from.color) ?? BLACK } : undefined;
  const all = { t: side(border.top), r: side(border.right), b: side(border.bottom), l: side(border.left) };
  return Object.fromEntries(Object.entries(all).filter(([, value]) => value)) as IBorderData;
};

const ground = (fill: CellStyle['fill'], color: ColorReader, differential: boolean): { rgb: string } | undefined => {
  if (!fill) return undefined;
  if (fill.type === 'gradient') return color(fill.stops[0]?.color);
  if (fill.pattern === 'none' && !differential) return undefined;
  // A conditional format keeps the colour of a solid fill as its background, a cell format as its foreground.
  return differential ? (color(fill.bgColor) ?? color(fill.fgColor)) : (color(fill.fgColor) ?? color(fill.bgColor));
};

/** A machine without the workbook's font shows a plain one, not the browser's serif. Carlito has Calibri's widths. */
export const withFallback = (family: string): string => `${family}, Carlito, Arial, sans-serif`;

/** The look of a cell, or of a conditional format (`differential`). */
export const styleFromFile = (style: CellStyle, color: ColorReader, differential = false): IStyleData => {
  const { font, alignment } = style;
  const bg = ground(style.fill, color, differential);
  const cl = color(font?.color);
  const found: IStyleData = {
    ...(font?.name && { ff: withFallback(font.name) }),
    ...(font?.size && { fs: font.size }),
    ...(font?.bold && { bl: 1 }),
    ...(font?.italic && { it: 1 }),
    ...(font?.strikethrough && { st: { s: 1 } }),
    ...(font?.underline && { ul: { s: 1 } }),
    ...(font?.strikethrough && { st: { s: 1 } }),
    ...(cl && { cl }),
    ...(bg && { bg }),
    ...(style.border && { bd: borders(style.border, color) }),
    ...(alignment?.horizontal && HORIZONTAL[alignment.horizontal] && { ht: HORIZONTAL[alignment.horizontal] }),
    ...(alignment?.vertical && VERTICAL[alignment.vertical] && { vt: VERTICAL[alignment.vertical] }),
    ...(alignment?.wrapText && { tb: WRAP }),
    ...(style.numFmt && style.numFmt !== 'General' && { n: { pattern: style.numFmt } }),
  };
  return found;
};

/** Gives each distinct look one id. */
export class StyleTable {
  readonly styles: Record<string, IStyleData> = {};
  private readonly ids = new Map<string, string>();
  private readonly seen = new WeakMap<CellStyle, string | undefined>();

  constructor(private readonly color: ColorReader) {}

  idOf(style: CellStyle | undefined): string | undefined {
    if (!style) return undefined;
    if (this.seen.has(style)) return this.seen.get(style);
    const found = styleFromFile(style, this.color);
    const key = JSON.stringify(found);
    let id = key === '{}' ? undefined : this.ids.get(key);
    if (!id && key !== '{}') {
      id = `s${this.ids.size}`;
      this.ids.set(key, id);
      this.styles[id] = found;
    }
    this.seen.set(style, id);
    return id;
  }
}
