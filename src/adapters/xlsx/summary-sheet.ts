import { wrap } from '../../core/wrap';
import { SUMMARY_COLUMNS } from '../../workbook/summary';
import type { OwnSheet } from './chart-parts';
import type { Package } from './package';
import { Splice } from './splice';
import { addSheet, stylesPart } from './workbook-edit';
import { readWorkbookPart } from './workbook-part';
import { escapeXml, fromUtf8, utf8 } from './xml-text';
import { child, childrenOf, parseTree, tagName, type XmlElement } from './xml-tree';

const ACCENT = 'FF0F4C4A';
const HAIRLINE = 'FFC9D3D1';
const BEFORE_CELLS =
  `<sheetPr><tabColor rgb="${ACCENT}"/><pageSetUpPr fitToPage="1"/></sheetPr>` +
  '<sheetViews><sheetView showGridLines="0" workbookViewId="0"/></sheetViews><sheetFormatPr defaultRowHeight="15"/>';

/** How a sheet of ours is printed: number of the paper size, foot of each page with its codes. */
export interface SheetPrint {
  readonly paper: number;
  readonly foot: string;
}
const A4: SheetPrint = { paper: 9, foot: '&L&A&RPage &P of &N' };

/** Landscape, one page wide. */
const behindCells = ({ paper, foot }: SheetPrint): string =>
  '<pageMargins left="0.5" right="0.5" top="0.6" bottom="0.6" header="0.3" footer="0.3"/>' +
  `<pageSetup paperSize="${paper}" orientation="landscape" fitToHeight="0"/>` +
  `<headerFooter><oddFooter>${escapeXml(foot)}</oddFooter></headerFooter>`;

/** Adds the empty summary sheet with what the port does not know: paper, hairlines, text at the top of its cell. */
export const addSummarySheet = (pkg: Package, workbook: string, name: string, print: SheetPrint = A4): void => {
  addSheet(pkg, readWorkbookPart(pkg, workbook), name);
  const book = readWorkbookPart(pkg, workbook);
  const { part } = book.sheets.find((sheet) => sheet.name === name)!;
  const style = addStyle(pkg, stylesPart(pkg, book));
  const columns = SUMMARY_COLUMNS.map((_, i) => `<col min="${i + 1}" max="${i + 1}" width="10" style="${style}"/>`);
  const [before, behind] = fromUtf8(pkg.read(part)).split('<sheetData/>') as [string, string];
  const cells = `<cols>${columns.join('')}</cols><sheetData/>`;
  pkg.write(part, utf8(before + BEFORE_CELLS + cells + behindCells(print) + behind));
};

/** A cell style with a hairline below and its text at the top; returns its number. */
const addStyle = (pkg: Package, part: string): number => {
  const bytes = pkg.read(part);
  const root = parseTree(bytes, part);
  const splice = new Splice(bytes);
  const t = (local: string): string => tagName(root, local);
  const append = (list: XmlElement, xml: string): number => {
    const count = list.children.length;
    splice.append(list, xml);
    splice.setAttribute(list, 'count', String(count + 1));
    return count;
  };
  const borders = child(root, 'borders');
  const styles = child(root, 'cellXfs');
  if (!borders || !styles) return 0;
  const side = (local: string): string => `<${t(local)}/>`;
  const line = `<${t('bottom')} style="hair"><${t('color')} rgb="${HAIRLINE}"/></${t('bottom')}>`;
  const sides = side('left') + side('right') + side('top') + line + side('diagonal');
  const border = append(borders, `<${t('border')}>${sides}</${t('border')}>`);
  const shape = 'numFmtId="0" fontId="0" fillId="0" xfId="0" applyBorder="1" applyAlignment="1"';
  const style = append(
    styles,
    `<${t('xf')} ${shape} borderId="${border}"><${t('alignment')} vertical="top"/></${t('xf')}>`,
  );
  pkg.write(part, splice.apply());
  return style;
};

export const POINTS_PER_LINE = 13.5;
const POINTS_BESIDE = 2;
/** A column that shows so many digits shows about a tenth more letters of running text. */
export const LETTERS_PER_DIGIT = 1.1;

/**
 * Gives rows the height that their wrapped texts need, for not every program works it out when it opens a file. The
 * cells begin in the row `from`; behind that rows without cells of ours keep their height.
 */
export const fitHeights = (
  pkg: Package,
  { part }: OwnSheet,
  cells: readonly (readonly unknown[])[],
  widths: readonly number[],
  from = 0,
): void => {
  const root = parseTree(pkg.read(part), part);
  const splice = new Splice(pkg.read(part));
  for (const row of childrenOf(child(root, 'sheetData'), 'row')) {
    const at = Number(row.attributes.get('r')) - 1 - from;
    const line = cells[at];
    if (from > 0 && !line) continue;
    const height = line && String(linesOf(line, widths) * POINTS_PER_LINE + POINTS_BESIDE);
    if (row.attributes.get('ht') === height) continue;
    // Attributes come in front of those that are there, so the later one first.
    splice.setAttribute(row, 'customHeight', height && '1');
    splice.setAttribute(row, 'ht', height);
  }
  if (!splice.isEmpty) pkg.write(part, splice.apply());
};

const linesOf = (line: readonly unknown[], widths: readonly number[]): number =>
  Math.max(1, ...widths.map((width, i) => wrap(String(line[i] ?? ''), width * LETTERS_PER_DIGIT).length));
