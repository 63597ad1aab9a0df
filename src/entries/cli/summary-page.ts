import { nodeCodec } from '../../adapters/xlsx/codec-node';
import { putCharts, type OwnSheet } from '../../adapters/xlsx/chart-parts';
import { FILE_LIMITS } from '../../adapters/xlsx/limits';
import { Package } from '../../adapters/xlsx/package';
import { Splice } from '../../adapters/xlsx/splice';
import { verifyFile } from '../../adapters/xlsx/verify';
import { addSheet, stylesPart } from '../../adapters/xlsx/workbook-edit';
import { findWorkbookPart, readWorkbookPart } from '../../adapters/xlsx/workbook-part';
import { fromUtf8, utf8 } from '../../adapters/xlsx/xml-text';
import { child, childrenOf, parseTree, tagName, type XmlElement } from '../../adapters/xlsx/xml-tree';
import type { BarChart } from '../../workbook/charts';
import { SUMMARY_COLUMNS } from '../../workbook/summary';
import { wrap } from './wrap';

const ACCENT = 'FF0F4C4A';
const HAIRLINE = 'FFC9D3D1';
const BEFORE_CELLS =
  `<sheetPr><tabColor rgb="${ACCENT}"/><pageSetUpPr fitToPage="1"/></sheetPr>` +
  '<sheetViews><sheetView showGridLines="0" workbookViewId="0"/></sheetViews><sheetFormatPr defaultRowHeight="15"/>';
/** A4 landscape, one page wide. */
const BEHIND_CELLS =
  '<pageMargins left="0.5" right="0.5" top="0.6" bottom="0.6" header="0.3" footer="0.3"/>' +
  '<pageSetup paperSize="9" orientation="landscape" fitToHeight="0"/>' +
  '<headerFooter><oddFooter>&amp;L&amp;A&amp;RPage &amp;P of &amp;N</oddFooter></headerFooter>';

/**
 * Adds the empty summary sheet with what the port does not know: paper, hairlines, text at the top of its cell. Returns
 * the whole file, all other parts as they were.
 */
export const withSummarySheet = (bytes: Uint8Array, name: string): Uint8Array => {
  const pkg = new Package(bytes, nodeCodec, FILE_LIMITS);
  const workbook = findWorkbookPart(pkg);
  addSheet(pkg, readWorkbookPart(pkg, workbook), name);
  const book = readWorkbookPart(pkg, workbook);
  const { part } = book.sheets.find((sheet) => sheet.name === name)!;
  const style = addStyle(pkg, stylesPart(pkg, book));
  const columns = SUMMARY_COLUMNS.map((_, i) => `<col min="${i + 1}" max="${i + 1}" width="10" style="${style}"/>`);
  const [before, behind] = fromUtf8(pkg.read(part)).split('<sheetData/>') as [string, string];
  const cells = `<cols>${columns.join('')}</cols><sheetData/>`;
  pkg.write(part, utf8(before + BEFORE_CELLS + cells + BEHIND_CELLS + behind));
  const saved = pkg.save();
  verifyFile(pkg, saved);
  return saved;
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

const POINTS_PER_LINE = 13.5;
const POINTS_BESIDE = 2;
/** A column that shows so many digits shows about a tenth more letters of running text. */
const LETTERS_PER_DIGIT = 1.1;

/** Opens a workbook file for one edit of an own sheet. Returns the bytes as they were when nothing had to change. */
export const onSheet = (bytes: Uint8Array, name: string, edit: (pkg: Package, sheet: OwnSheet) => void): Uint8Array => {
  const pkg = new Package(bytes, nodeCodec, FILE_LIMITS);
  const { sheets, relationSpace } = readWorkbookPart(pkg, findWorkbookPart(pkg));
  const { part } = sheets.find((sheet) => sheet.name === name)!;
  edit(pkg, { name, part, relationSpace });
  if (!pkg.isChanged) return bytes;
  const saved = pkg.save();
  verifyFile(pkg, saved);
  return saved;
};

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

/** Heights and charts of the summary. Only names and texts wrap there; what stands beside them is short. */
export const withHeightsAndCharts = (
  bytes: Uint8Array,
  name: string,
  cells: readonly (readonly unknown[])[],
  charts: readonly BarChart[],
): Uint8Array =>
  onSheet(bytes, name, (pkg, sheet) => {
    fitHeights(pkg, sheet, cells, SUMMARY_COLUMNS.slice(0, 2));
    putCharts(pkg, sheet, charts);
  });
