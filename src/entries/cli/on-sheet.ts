import { nodeCodec } from '../../adapters/xlsx/codec-node';
import type { OwnSheet } from '../../adapters/xlsx/chart-parts';
import { FILE_LIMITS } from '../../adapters/xlsx/limits';
import { Package } from '../../adapters/xlsx/package';
import { verifyFile } from '../../adapters/xlsx/verify';
import { findWorkbookPart, readWorkbookPart } from '../../adapters/xlsx/workbook-part';

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
