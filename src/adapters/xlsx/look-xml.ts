import { SIDES, type BorderLine, type Borders, type WholeLook } from '../../workbook/whole-look';
import { escapeAttribute } from './xml-text';

/** A child of a font or a border, as text. */
export interface Piece {
  readonly local: string;
  readonly xml: string;
}
type TagOf = (local: string) => string;

/** Children of a font in the order that every program takes. */
const FONT_ORDER = 'b i strike condense extend outline shadow u vertAlign sz color name family charset scheme'.split(
  ' ',
);

/** "#1f77b4" as the format writes colours, opaque. */
export function argb(colour: string): string {
  const found = /^#?([0-9a-f]{6})$/i.exec(colour);
  if (!found) throw new Error(`not a colour: ${colour}`);
  return `FF${found[1]!.toUpperCase()}`;
}

export const asksForFont = ({ bold, ink, italic, underline, strike, font, points }: WholeLook): boolean =>
  [bold, ink, italic, underline, strike, font, points].some((asked) => asked !== undefined);

/** A font's children with the look laid over them. */
export function fontPieces(base: readonly Piece[], look: WholeLook, t: TagOf): readonly Piece[] {
  const pieces = [...base];
  const put = (local: string, xml: string | undefined, ...instead: readonly string[]): void => {
    const gone = new Set([local, ...instead]);
    pieces.splice(0, pieces.length, ...pieces.filter((piece) => !gone.has(piece.local)));
    if (xml === undefined) return;
    const rank = FONT_ORDER.indexOf(local);
    const at = pieces.findLastIndex((piece) => FONT_ORDER.indexOf(piece.local) < rank) + 1;
    pieces.splice(at, 0, { local, xml });
  };
  const mark = (local: string, on: boolean | undefined): void =>
    on === undefined ? undefined : put(local, on ? `<${t(local)}/>` : undefined);
  mark('b', look.bold);
  mark('i', look.italic);
  mark('strike', look.strike);
  mark('u', look.underline);
  if (look.points !== undefined) put('sz', `<${t('sz')} val="${look.points}"/>`);
  if (look.ink === null) put('color', undefined);
  else if (look.ink !== undefined) put('color', `<${t('color')} rgb="${argb(look.ink)}"/>`);
  // A scheme or a family of the font before would stand against the new one.
  if (look.font !== undefined)
    put('name', `<${t('name')} val="${escapeAttribute(look.font)}"/>`, 'family', 'charset', 'scheme');
  return pieces;
}

/** The lines that a look asks for, if any. */
export const bordersOf = ({ borders, hairline }: WholeLook): Borders | undefined =>
  hairline === undefined ? borders : { ...borders, bottom: { style: 'hair', colour: hairline } };

export function borderXml(lines: Borders, t: TagOf): string {
  const side = (local: string, line: BorderLine | undefined): string => {
    if (!line) return `<${t(local)}/>`;
    const colour = line.colour === undefined ? '' : `<${t('color')} rgb="${argb(line.colour)}"/>`;
    return `<${t(local)} style="${line.style}">${colour}</${t(local)}>`;
  };
  return `<${t('border')}>${SIDES.map((name) => side(name, lines[name])).join('')}<${t('diagonal')}/></${t('border')}>`;
}
