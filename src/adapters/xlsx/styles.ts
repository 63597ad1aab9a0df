import type { MarkRule } from '../../workbook/port';
import type { Borders, WholeLook } from '../../workbook/whole-look';
import { isDateFormat } from './date-cells';
import { CELL_STYLES } from './limits';
import { argb, asksForFont, borderXml, bordersOf, fontPieces } from './look-xml';
import type { Package } from './package';
import { refuse } from './refuse';
import { Splice } from './splice';
import { escapeAttribute } from './xml-text';
import { child, childrenOf, onOff, parseTree, rawText, tagName, type XmlElement } from './xml-tree';

/** Order of the lists in the styles part. */
const ORDER = 'numFmts fonts fills borders cellStyleXfs cellXfs cellStyles dxfs tableStyles colors extLst'.split(' ');
/** Number formats that every program knows by id (ECMA-376 part 1, 18.8.30). */
const BUILT_IN = new Map([
  ['General', 0],
  ['0', 1],
  ['0.00', 2],
  ['#,##0', 3],
  ['#,##0.00', 4],
  ['0%', 9],
  ['0.00%', 10],
  ['0.00E+00', 11],
  ['@', 49],
]);
const FIRST_OWN_FORMAT = 164;

/** Looks are only ever added, and an equal one that is there already is used again. */
export class Styles {
  private readonly bytes: Uint8Array;
  private readonly root: XmlElement;
  private readonly lists = new Map<string, StyleList>();
  private readonly formats = new Map<string, number>();
  private readonly dateStyles: (boolean | undefined)[] = [];
  private readonly crossedStyles: (boolean | undefined)[] = [];
  private readonly known = new Map<string, number>();

  constructor(
    private readonly pkg: Package,
    readonly part: string,
  ) {
    this.bytes = pkg.read(part);
    this.root = parseTree(this.bytes, part);
    for (const format of childrenOf(child(this.root, 'numFmts'), 'numFmt')) {
      const code = format.attributes.get('formatCode') ?? '';
      if (!this.formats.has(code)) this.formats.set(code, Number(format.attributes.get('numFmtId')));
    }
  }

  get count(): number {
    return this.list('cellXfs').size;
  }

  get differentialCount(): number {
    return this.list('dxfs').size;
  }

  isDate(style: number): boolean {
    let date = this.dateStyles[style];
    if (date === undefined) {
      const id = Number(this.list('cellXfs').elementAt(style)?.attributes.get('numFmtId') ?? 0);
      const code = [...this.formats].find(([, known]) => known === id)?.[0];
      this.dateStyles[style] = date = isDateFormat(id, code);
    }
    return date;
  }

  /** Whether the text of cells with this style is crossed out. */
  isCrossedOut(style: number): boolean {
    let crossed = this.crossedStyles[style];
    if (crossed === undefined) {
      const font = Number(this.list('cellXfs').elementAt(style)?.attributes.get('fontId') ?? 0);
      const strike = child(this.list('fonts').elementAt(font), 'strike');
      this.crossedStyles[style] = crossed = strike !== undefined && onOff(strike.attributes.get('val') ?? '1');
    }
    return crossed;
  }

  /** The cell style that is `base` with the look laid over it. */
  styleFor(base: number, look: WholeLook): number {
    const key = `${base} ${JSON.stringify(look)}`;
    let style = this.known.get(key);
    if (style === undefined) {
      style = this.list('cellXfs').add(this.cellFormat(base, look), base);
      if (style >= CELL_STYLES) refuse('too-large', 'The workbook has no room for more cell formats.');
      this.known.set(key, style);
    }
    return style;
  }

  /** The look that a conditional format lays over a cell. */
  differential({ ink, ground, sign }: Pick<MarkRule, 'ink' | 'ground' | 'sign'>): number {
    const t = (local: string): string => tagName(this.root, local);
    const font = `<${t('font')}><${t('color')} rgb="${argb(ink)}"/></${t('font')}>`;
    const pattern = `<${t('patternFill')}><${t('bgColor')} rgb="${argb(ground)}"/></${t('patternFill')}>`;
    const format = sign === undefined ? '' : this.signFormat(sign);
    return this.list('dxfs').add(`<${t('dxf')}>${font}${format}<${t('fill')}>${pattern}</${t('fill')}></${t('dxf')}>`);
  }

  /** Writes what was added. */
  flush(): void {
    const grown = [...this.lists.values()].filter((list) => list.added.length > 0);
    if (grown.length === 0) return;
    const splice = new Splice(this.bytes);
    for (const list of grown.sort((a, b) => ORDER.indexOf(a.name) - ORDER.indexOf(b.name))) {
      const items = list.added.join('');
      if (list.element) {
        splice.append(list.element, items);
        splice.setAttribute(list.element, 'count', String(list.size));
      } else {
        const tag = tagName(this.root, list.name);
        const after = this.root.children.find((c) => ORDER.indexOf(c.local) > ORDER.indexOf(list.name));
        const xml = `<${tag} count="${list.size}">${items}</${tag}>`;
        if (after) splice.insert(after.start, xml);
        else splice.append(this.root, xml);
      }
    }
    this.pkg.write(this.part, splice.apply());
  }

  private list(name: string): StyleList {
    let list = this.lists.get(name);
    if (!list) this.lists.set(name, (list = new StyleList(name, child(this.root, name), this.part)));
    return list;
  }

  private cellFormat(base: number, look: WholeLook): string {
    const element = this.list('cellXfs').elementAt(base);
    const xf = new Map(
      element?.attributes ?? [
        ['numFmtId', '0'],
        ['fontId', '0'],
        ['fillId', '0'],
        ['borderId', '0'],
      ],
    );
    const use = (id: string, value: number, apply: string): void => void xf.set(id, String(value)).set(apply, '1');
    if (look.numberFormat !== undefined) use('numFmtId', this.numberFormat(look.numberFormat), 'applyNumberFormat');
    if (asksForFont(look)) use('fontId', this.font(Number(xf.get('fontId') ?? 0), look), 'applyFont');
    if (look.ground !== undefined) use('fillId', this.fill(look.ground), 'applyFill');
    const lines = bordersOf(look);
    if (lines) use('borderId', this.border(lines), 'applyBorder');
    let inside = '';
    const t = (local: string): string => tagName(this.root, local);
    const alignment = new Map(child(element, 'alignment')?.attributes ?? []);
    const align = (name: string, value: string | null | undefined): void => {
      if (value === undefined) return;
      if (value === null) alignment.delete(name);
      else alignment.set(name, value);
      xf.set('applyAlignment', '1');
    };
    align('horizontal', look.align);
    align('vertical', look.vertical);
    if (look.wrap !== undefined) align('wrapText', look.wrap ? '1' : '0');
    if (alignment.size > 0) inside += `<${t('alignment')}${attributesText(alignment)}/>`;
    for (const other of element?.children ?? [])
      if (other.local !== 'alignment') inside += rawText(this.bytes, other.start, other.end);
    return `<${t('xf')}${attributesText(xf)}${inside === '' ? '/>' : `>${inside}</${t('xf')}>`}`;
  }

  /** A format that shows a sign in front of any text. */
  private signFormat(sign: string): string {
    const code = `General;General;General;"${sign} "@`;
    return `<${tagName(this.root, 'numFmt')} numFmtId="${this.numberFormat(code)}" formatCode="${escapeAttribute(code)}"/>`;
  }

  private numberFormat(code: string): number {
    const known = BUILT_IN.get(code) ?? this.formats.get(code);
    if (known !== undefined) return known;
    const id = Math.max(FIRST_OWN_FORMAT - 1, ...[...this.formats.values()].filter(Number.isFinite)) + 1;
    this.formats.set(code, id);
    this.list('numFmts').add(
      `<${tagName(this.root, 'numFmt')} numFmtId="${id}" formatCode="${escapeAttribute(code)}"/>`,
    );
    return id;
  }

  private font(base: number, look: WholeLook): number {
    const t = (local: string): string => tagName(this.root, local);
    const element = this.list('fonts').elementAt(base);
    const there = (element?.children ?? []).map((c) => ({ local: c.local, xml: rawText(this.bytes, c.start, c.end) }));
    const pieces = fontPieces(there, look, t);
    return this.list('fonts').add(`<${t('font')}>${pieces.map((c) => c.xml).join('')}</${t('font')}>`, base);
  }

  private border(lines: Borders): number {
    const t = (local: string): string => tagName(this.root, local);
    const borders = this.list('borders');
    if (borders.size === 0) borders.add(`<${t('border')}/>`);
    return borders.add(borderXml(lines, t));
  }

  private fill(ground: string | null): number {
    if (ground === null) return 0;
    const t = (local: string): string => tagName(this.root, local);
    const fills = this.list('fills');
    // The first two fills have a fixed meaning.
    for (const kind of ['none', 'gray125'].slice(fills.size))
      fills.add(`<${t('fill')}><${t('patternFill')} patternType="${kind}"/></${t('fill')}>`);
    const colours = `<${t('fgColor')} rgb="${argb(ground)}"/><${t('bgColor')} indexed="64"/>`;
    const pattern = `<${t('patternFill')} patternType="solid">${colours}</${t('patternFill')}>`;
    return fills.add(`<${t('fill')}>${pattern}</${t('fill')}>`);
  }
}

/** One list of the styles part: what is in it, and what we add. */
class StyleList {
  readonly added: string[] = [];
  private readonly elements: readonly XmlElement[];
  private places: Map<string, number> | undefined;

  constructor(
    readonly name: string,
    readonly element: XmlElement | undefined,
    private readonly part: string,
  ) {
    this.elements = element?.children ?? [];
  }

  get size(): number {
    return this.elements.length + this.added.length;
  }

  /** An item that the part had before we added any. */
  elementAt(n: number): XmlElement | undefined {
    return this.elements[n];
  }

  /** Index of an equal item, preferably the given one; otherwise the item is added. */
  add(xml: string, preferred?: number): number {
    const bytes = new TextEncoder().encode(xml);
    const key = canonical(parseTree(bytes, this.part));
    const there = preferred === undefined ? undefined : this.elements[preferred];
    if (there && canonical(there) === key) return preferred!;
    this.places ??= new Map(this.elements.map((item, n) => [canonical(item), n] as const).reverse());
    const known = this.places.get(key);
    if (known !== undefined) return known;
    this.places.set(key, this.size);
    this.added.push(xml);
    return this.size - 1;
  }
}

/** Equal for elements that say the same, whatever their prefix, quotes or order of attributes. */
function canonical(element: XmlElement): string {
  const attributes = [...element.attributes]
    .filter(([name]) => !name.startsWith('xmlns'))
    .sort(([a], [b]) => (a < b ? -1 : 1));
  return `${element.local}${JSON.stringify(attributes)}(${element.children.map(canonical).join()})`;
}

const attributesText = (attributes: ReadonlyMap<string, string>): string =>
  [...attributes].map(([name, value]) => ` ${name}="${escapeAttribute(value)}"`).join('');
