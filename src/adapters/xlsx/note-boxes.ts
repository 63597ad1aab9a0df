import { parseCell } from './cell-reference';
import { freePartName, setDefaultType } from './content-types';
import { LAST_COLUMN, LAST_ROW } from './limits';
import type { Package } from './package';
import { refuse } from './refuse';

const CONTENT_TYPE = 'application/vnd.openxmlformats-officedocument.vmlDrawing';
/** Shape ids are given out in blocks of 1024; a drawing lists the blocks that are its own. */
const BLOCK = 1024;
const LINE_CHARACTERS = 34;
const V = 'urn:schemas-microsoft-com:vml';
const O = 'urn:schemas-microsoft-com:office:office';
const X = 'urn:schemas-microsoft-com:office:excel';
const BOX_TYPE =
  '<v:shapetype id="_x0000_t202" coordsize="21600,21600" o:spt="202" path="m,l,21600r21600,l21600,xe">' +
  '<v:stroke joinstyle="miter"/><v:path gradientshapeok="t" o:connecttype="rect"/></v:shapetype>';

/** The drawing of the boxes in which notes show. It may be no well-formed XML, so it is read as text, one byte a letter. */
export class NoteBoxes {
  private text: string;
  private readonly before: string;

  constructor(
    private readonly pkg: Package,
    private readonly part: string,
  ) {
    this.text = this.before = latin1(pkg.read(part));
  }

  static create(pkg: Package): string {
    const name = freePartName(pkg, 'xl/drawings/vmlDrawing', 'vml');
    const root = `<xml xmlns:v="${V}" xmlns:o="${O}" xmlns:x="${X}">`;
    const layout =
      `<o:shapelayout v:ext="edit"><o:idmap v:ext="edit" data="${firstFreeBlock(pkg)}"/></o:shapelayout>` + BOX_TYPE;
    setDefaultType(pkg, 'vml', CONTENT_TYPE);
    pkg.write(name, new TextEncoder().encode(`${root}${layout}</xml>`));
    return name;
  }

  remove(cell: string): void {
    const at = parseCell(cell)!;
    for (let from = this.text.indexOf('<v:shape '); from >= 0; from = this.text.indexOf('<v:shape ', from + 1)) {
      const close = this.text.indexOf('</v:shape>', from);
      if (close < 0) return;
      const shape = this.text.slice(from, close);
      const row = /<x:Row>\s*(\d+)\s*<\/x:Row>/.exec(shape)?.[1];
      const column = /<x:Column>\s*(\d+)\s*<\/x:Column>/.exec(shape)?.[1];
      if (!shape.includes('"Note"') || Number(row) !== at.row || Number(column) !== at.column) continue;
      this.text = this.text.slice(0, from) + this.text.slice(close + '</v:shape>'.length);
      return;
    }
  }

  add(notes: readonly { readonly cell: string; readonly text: string }[]): void {
    if (notes.length === 0) return;
    const end = this.text.lastIndexOf('</');
    if (end < 0) refuse('unsupported', `${this.part} is damaged: it has no end.`);
    const ids = this.takeIds(notes.length);
    const type = this.text.includes('id="_x0000_t202"') ? '' : declared(BOX_TYPE, 'v:shapetype');
    const shapes = notes.map(({ cell, text }, n) => declared(shapeXml(ids[n]!, cell, text), 'v:shape'));
    const at = this.text.lastIndexOf('</');
    this.text = this.text.slice(0, at) + type + shapes.join('') + this.text.slice(at);
  }

  write(): void {
    if (this.text !== this.before)
      this.pkg.write(
        this.part,
        Uint8Array.from(this.text, (c) => c.charCodeAt(0)),
      );
  }

  /** Free shape ids from the blocks of this drawing, which gets more blocks when they are used up. */
  private takeIds(count: number): number[] {
    const used = new Set([...this.text.matchAll(/_x0000_s(\d{1,9})/g)].map(([, id]) => Number(id)));
    const blocks = blocksOf(this.text);
    let next = Math.max(firstFreeBlock(this.pkg), ...blocks.map((block) => block + 1));
    const ids: number[] = [];
    const known = blocks.length;
    for (let n = 0; ids.length < count; n++) {
      if (n === blocks.length) blocks.push(next++);
      for (let id = blocks[n]! * BLOCK + 1; id < (blocks[n]! + 1) * BLOCK && ids.length < count; id++)
        if (!used.has(id)) ids.push(id);
    }
    if (blocks.length > known && known > 0)
      this.text = this.text.replace(IDMAP, (all, data: string) => all.replace(`"${data}"`, `"${blocks.join()}"`));
    return ids;
  }
}

const IDMAP = /<o:idmap\b[^>]{0,200}?\bdata="([\d,\s]{1,2000})"/;
const blocksOf = (text: string): number[] => IDMAP.exec(text)?.[1]?.split(',').map(Number) ?? [];

function firstFreeBlock(pkg: Package): number {
  const drawings = pkg.names().filter((name) => /\.vml$/i.test(name));
  return Math.max(0, ...drawings.flatMap((name) => blocksOf(latin1(pkg.read(name))))) + 1;
}

/** The namespaces are declared again on what we add: the root of a drawing made elsewhere may lack them. */
const declared = (xml: string, tag: string): string =>
  xml.replace(`<${tag} `, `<${tag} xmlns:v="${V}" xmlns:o="${O}" xmlns:x="${X}" `);

function shapeXml(id: number, cell: string, text: string): string {
  const { row, column } = parseCell(cell)!;
  const lines = text.split('\n').reduce((sum, line) => sum + Math.max(1, Math.ceil(line.length / LINE_CHARACTERS)), 0);
  const top = Math.max(0, row - 1);
  const left = Math.min(column + 1, LAST_COLUMN - 3);
  const bottom = Math.min(top + Math.min(Math.max(4, lines + 1), 30), LAST_ROW);
  const anchor = `${left}, 15, ${top}, 10, ${left + 3}, 15, ${bottom}, 4`;
  return (
    `<v:shape id="_x0000_s${id}" type="#_x0000_t202" style="position:absolute;z-index:1;visibility:hidden" ` +
    'fillcolor="#fffff0" o:insetmode="auto"><v:fill color2="#fffff0"/><v:path o:connecttype="none"/>' +
    '<v:textbox style="mso-direction-alt:auto"><div style="text-align:left"></div></v:textbox>' +
    '<x:ClientData ObjectType="Note"><x:MoveWithCells/><x:SizeWithCells/>' +
    `<x:Anchor>${anchor}</x:Anchor><x:AutoFill>False</x:AutoFill><x:Row>${row}</x:Row><x:Column>${column}</x:Column>` +
    '</x:ClientData></v:shape>'
  );
}

const latin1 = (bytes: Uint8Array): string => {
  let text = '';
  for (let at = 0; at < bytes.length; at += BLOCK) text += String.fromCharCode(...bytes.subarray(at, at + BLOCK));
  return text;
};
