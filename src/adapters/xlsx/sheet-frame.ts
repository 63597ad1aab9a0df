import { rangeAddress, cellAddress } from '../../workbook/address';
import type { ReadingSheet } from '../../workbook/port';
import type { WholeLook } from '../../workbook/whole-look';
import type { SheetFrame } from '../../workbook/whole-sheet';
import { argb } from './look-xml';
import { addTables } from './new-table';
import type { Package } from './package';
import { Styles } from './styles';
import { addSheet, stylesPart } from './workbook-edit';
import { readWorkbookPart } from './workbook-part';
import { escapeXml, fromUtf8, utf8 } from './xml-text';

/** Number of the paper size that most of the world prints on (ECMA-376-1, 18.3.1.63). */
const A4 = 9;

/** How a sheet of ours is printed: number of the paper size, foot of each page with its codes. */
export interface SheetPrint {
  readonly paper: number;
  readonly foot: string;
}
interface PrintedFrame extends SheetFrame {
  readonly print?: SheetPrint;
}

const TO_READ = { tabColour: '#0f4c4a', hasGridLines: false } as const;
/** Frames of a sheet to be read and printed; looks and widths come with its cells. */
export const readingFrame = (reading: ReadingSheet): PrintedFrame => ({ ...TO_READ, reading });
export const printedFrame = (print: SheetPrint): PrintedFrame => ({ ...TO_READ, print });

const printOf = ({ print, reading }: PrintedFrame): SheetPrint | undefined =>
  print ?? (reading && { paper: A4, foot: `&L&A&R${reading.foot}` });

/** Adds an empty sheet with what stands around its cells. */
export const addFramedSheet = (pkg: Package, workbook: string, name: string, frame: PrintedFrame): void => {
  addSheet(pkg, readWorkbookPart(pkg, workbook), name, frame.isHidden);
  const book = readWorkbookPart(pkg, workbook);
  const { part } = book.sheets.find((sheet) => sheet.name === name)!;
  const styles = new Styles(pkg, stylesPart(pkg, book));
  const columns = columnsXml(frame, (look) => styles.styleFor(0, look));
  styles.flush();
  const [before, behind] = fromUtf8(pkg.read(part)).split('<sheetData/>') as [string, string];
  const rows = rowsXml(frame);
  const cells = rows === '' ? '<sheetData/>' : `<sheetData>${rows}</sheetData>`;
  const space = /xmlns="([^"]*)"/.exec(before)?.[1] ?? '';
  const tables = addTables(pkg, { part, relationSpace: book.relationSpace, space }, frame.tables ?? []);
  pkg.write(part, utf8(before + beforeColumns(frame) + columns + cells + behindCells(frame) + tables + behind));
};

const beforeColumns = (frame: PrintedFrame): string => {
  const { tabColour, hasGridLines = true, frozen, usualWidth } = frame;
  const colour = tabColour === undefined ? '' : `<tabColor rgb="${argb(tabColour)}"/>`;
  const setUp = printOf(frame) ? '<pageSetUpPr fitToPage="1"/>' : '';
  const properties = colour + setUp === '' ? '' : `<sheetPr>${colour}${setUp}</sheetPr>`;
  const view = `<sheetView${hasGridLines ? '' : ' showGridLines="0"'} workbookViewId="0"`;
  const pane = paneXml(frozen);
  return (
    `${properties}<sheetViews>${view}${pane === '' ? '/>' : `>${pane}</sheetView>`}</sheetViews>` +
    `<sheetFormatPr${usualWidth === undefined ? '' : ` defaultColWidth="${usualWidth}"`} defaultRowHeight="15"/>`
  );
};

const paneXml = (frozen: SheetFrame['frozen']): string => {
  if (!frozen || (frozen.rows === 0 && frozen.columns === 0)) return '';
  const { rows, columns } = frozen;
  const pane = rows === 0 ? 'topRight' : columns === 0 ? 'bottomLeft' : 'bottomRight';
  const split = (columns > 0 ? ` xSplit="${columns}"` : '') + (rows > 0 ? ` ySplit="${rows}"` : '');
  const corner = cellAddress(rows, columns);
  return `<pane${split} topLeftCell="${corner}" activePane="${pane}" state="frozen"/><selection pane="${pane}" activeCell="${corner}" sqref="${corner}"/>`;
};

const columnsXml = ({ columns }: SheetFrame, styleOf: (look: WholeLook) => number): string => {
  const all = [...(columns ?? [])].sort(([a], [b]) => a - b);
  if (all.length === 0) return '';
  const items = all.map(([index, { width = 9, isHidden, look }]) => {
    const style = look ? styleOf(look) : 0;
    const rest = `${style > 0 ? ` style="${style}"` : ''}${isHidden ? ' hidden="1"' : ''}`;
    return `<col min="${index + 1}" max="${index + 1}" width="${width}"${rest} customWidth="1"/>`;
  });
  return `<cols>${items.join('')}</cols>`;
};

const rowsXml = ({ rows }: SheetFrame): string =>
  [...(rows ?? [])]
    .sort(([a], [b]) => a - b)
    .map(([index, { height, isHidden }]) => {
      const size = height === undefined ? '' : ` ht="${height}" customHeight="1"`;
      return `<row r="${index + 1}"${size}${isHidden ? ' hidden="1"' : ''}/>`;
    })
    .join('');

/** Landscape and one page wide where it is printed as we set it up. */
const behindCells = (frame: PrintedFrame): string => {
  const { merged = [] } = frame;
  const blocks = merged.map((range) => `<mergeCell ref="${rangeAddress(range)}"/>`).join('');
  const merges = blocks === '' ? '' : `<mergeCells count="${merged.length}">${blocks}</mergeCells>`;
  const print = printOf(frame);
  if (!print) return merges;
  return (
    `${merges}<pageMargins left="0.5" right="0.5" top="0.6" bottom="0.6" header="0.3" footer="0.3"/>` +
    `<pageSetup paperSize="${print.paper}" orientation="landscape" fitToHeight="0"/>` +
    `<headerFooter><oddFooter>${escapeXml(print.foot)}</oddFooter></headerFooter>`
  );
};
