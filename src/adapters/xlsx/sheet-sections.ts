import type { RangeAddress } from '../../workbook/port';
import { rangeAddress } from '../../workbook/address';
import { parseRange } from './cell-reference';
import { LAST_COLUMN } from './limits';
import type { Splice } from './splice';
import { descendants, onOff, parseTree, type XmlElement } from './xml-tree';

/** Children of a worksheet in the order that the format fixes (ECMA-376 part 1, CT_Worksheet). */
export const SECTION_ORDER = (
  'sheetPr dimension sheetViews sheetFormatPr cols sheetData sheetCalcPr sheetProtection protectedRanges scenarios ' +
  'autoFilter sortState dataConsolidate customSheetViews mergeCells phoneticPr conditionalFormatting dataValidations ' +
  'hyperlinks printOptions pageMargins pageSetup headerFooter rowBreaks colBreaks customProperties cellWatches ' +
  'ignoredErrors smartTags drawing legacyDrawing legacyDrawingHF drawingHF picture oleObjects controls webPublishItems ' +
  'tableParts extLst'
).split(' ');

export interface Section {
  /** Name that decides its place: of an alternative, the name of what it holds. */
  readonly local: string;
  readonly start: number;
  readonly end: number;
}

/** Where everything but the cells lies in a worksheet part. */
export interface SheetLayout {
  readonly bytes: Uint8Array;
  readonly part: string;
  /** Namespace prefix of the root with its colon, or ''. */
  readonly prefix: string;
  /** Namespace that relation ids have here, and the prefix that the root declares for it, if any. */
  readonly relationSpace: string;
  readonly relationPrefix: string | undefined;
  readonly sections: readonly Section[];
  readonly rootEnd: number;
}

export function sectionOf(bytes: Uint8Array, part: string, local: string, start: number, end: number): Section {
  if (local !== 'AlternateContent') return { local, start, end };
  const inside = [...descendants(parseTree(bytes, part, start, end))].find((e) => SECTION_ORDER.includes(e.local));
  return { local: inside?.local ?? local, start, end };
}

export function sectionsNamed(layout: SheetLayout, local: string): XmlElement[] {
  return layout.sections
    .filter((section) => section.local === local)
    .map((section) => parseTree(layout.bytes, layout.part, section.start, section.end))
    .filter((element) => element.local === local);
}

/** Offset at which a new section of this name belongs. */
export function placeFor(layout: SheetLayout, local: string): number {
  const rank = SECTION_ORDER.indexOf(local);
  const after = layout.sections.find((section) => SECTION_ORDER.indexOf(section.local) > rank);
  return after?.start ?? layout.rootEnd;
}

/** Widens the noted extent of the sheet so that it holds the range too. */
export function growDimension(layout: SheetLayout, splice: Splice, range: RangeAddress | undefined): void {
  const [dimension] = sectionsNamed(layout, 'dimension');
  const old = parseRange(dimension?.attributes.get('ref') ?? '');
  if (!dimension || !old || !range) return;
  const grown = union(old, range);
  if (rangeAddress(grown) !== rangeAddress(old)) splice.setAttribute(dimension, 'ref', rangeAddress(grown));
}

export function union(a: RangeAddress, b: RangeAddress): RangeAddress {
  const row = Math.min(a.row, b.row);
  const column = Math.min(a.column, b.column);
  return {
    row,
    column,
    rows: Math.max(a.row + a.rows, b.row + b.rows) - row,
    columns: Math.max(a.column + a.columns, b.column + b.columns) - column,
  };
}

export interface ColumnSpan {
  /** 0-based, both included. */
  readonly first: number;
  readonly last: number;
  readonly attributes: ReadonlyMap<string, string>;
}

export function columnSpans(layout: SheetLayout): ColumnSpan[] {
  return sectionsNamed(layout, 'cols')
    .flatMap((cols) => cols.children.filter((c) => c.local === 'col'))
    .map(({ attributes }) => ({
      first: Number(attributes.get('min')) - 1,
      last: Math.min(Number(attributes.get('max')) - 1, LAST_COLUMN),
      attributes,
    }))
    .filter(({ first, last }) => first >= 0 && first <= last);
}

export const styleOfColumn = (spans: readonly ColumnSpan[], column: number): number =>
  Number(spans.find((span) => span.first <= column && column <= span.last)?.attributes.get('style') ?? 0);

export interface WidthEdit {
  readonly column: number;
  readonly columns: number;
  readonly characters: number;
}

/** Width in the file of a column that shows so many digits of the default font (ECMA-376 part 1, 18.3.1.13, 7-pixel digits). */
const storedWidth = (characters: number): number => Math.trunc(((characters * 7 + 5) / 7) * 256) / 256;

export function setWidths(layout: SheetLayout, splice: Splice, edits: readonly WidthEdit[]): void {
  let spans = columnSpans(layout);
  let changed = false;
  for (const { column, columns, characters } of edits) {
    const width = String(storedWidth(characters));
    for (let c = column; c < column + columns && c <= LAST_COLUMN; c++) {
      const at = spans.find((span) => span.first <= c && c <= span.last);
      const there = at?.attributes;
      if (there?.get('width') === width && onOff(there.get('customWidth'))) continue;
      changed = true;
      const attributes = new Map(there).set('width', width).set('customWidth', '1');
      attributes.delete('bestFit');
      spans = [...spans.flatMap((span) => (span === at ? around(span, c) : [span])), { first: c, last: c, attributes }];
    }
  }
  if (!changed) return;
  spans.sort((a, b) => a.first - b.first);
  const cols = `<${layout.prefix}cols>${spans.map((span) => columnXml(span, layout.prefix)).join('')}</${layout.prefix}cols>`;
  const [old] = sectionsNamed(layout, 'cols');
  if (old) splice.replace(old.start, old.end, cols);
  else splice.insert(placeFor(layout, 'cols'), cols);
}

const around = (span: ColumnSpan, column: number): ColumnSpan[] =>
  [
    { ...span, last: column - 1 },
    { ...span, first: column + 1 },
  ].filter(({ first, last }) => first <= last);

function columnXml({ first, last, attributes }: ColumnSpan, prefix: string): string {
  const rest = [...attributes].filter(([name]) => name !== 'min' && name !== 'max');
  return `<${prefix}col min="${first + 1}" max="${last + 1}"${rest.map(([name, value]) => ` ${name}="${value}"`).join('')}/>`;
}
