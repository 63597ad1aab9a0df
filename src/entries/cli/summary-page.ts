import { nodeCodec } from '../../adapters/xlsx/codec-node';
import { putCharts, type OwnSheet } from '../../adapters/xlsx/chart-parts';
import { FILE_LIMITS } from '../../adapters/xlsx/limits';
import { Package } from '../../adapters/xlsx/package';
import { addSummarySheet, fitHeights } from '../../adapters/xlsx/summary-sheet';
import { verifyFile } from '../../adapters/xlsx/verify';
import { findWorkbookPart, readWorkbookPart } from '../../adapters/xlsx/workbook-part';
import type { BarChart } from '../../workbook/charts';
import { SUMMARY_COLUMNS } from '../../workbook/summary';

/** Adds the empty summary sheet. Returns the whole file, all other parts as they were. */
export const withSummarySheet = (bytes: Uint8Array, name: string): Uint8Array => {
  const pkg = new Package(bytes, nodeCodec, FILE_LIMITS);
  addSummarySheet(pkg, findWorkbookPart(pkg), name);
  const saved = pkg.save();
  verifyFile(pkg, saved);
  return saved;
};

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

/** Heights and charts of the summary.. */
export const withHeightsAndCharts = (
  bytes: Uint8Array,
  name: string,
  cells: readonly (readonly unknown[])[],
  charts: readonly BarChart[],
): Uint8Array =>
  onSheet(bytes, name, (pkg, sheet) => {
    fitHeights(pkg, sheet, cells, SUMMARY_COLUMNS);
    putCharts(pkg, sheet, charts);
  });
