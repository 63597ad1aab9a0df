import { tablesOfEachList } from '../../../workbook/channel-lists';
import { HostProblem, type RangeAddress } from '../../../workbook/port';
import { TOLD_WORDS } from '../../../workbook/share/told-words';
import { FILE_LIMITS } from '../limits';
import { Package } from '../package';
import { verifyEdits, verifyFile } from '../verify';
import { findWorkbookPart, readWorkbookPart, type SheetEntry } from '../workbook-part';
import type { CopiedList, CopyRequest } from './copy-request';
import { openOnSheet } from './first-sheet';
import { raiseRows } from './row-heights';
import { hasPrintSetup, lockSheet, pagesWideFor, setUpPrint, widenPrint } from './print-setup';
import { passPrivate } from './private-parts';
import { stillThere, type LeftOutContent } from './remaining';
import { trimStrings } from './strings-trim';
import { sweep } from './sweep';
import { areaWith, setSheetName, titlesWith, titleRows } from './workbook-pass';

/** Print set-up, heights, locks and properties; then nothing private may be left, which is looked for. */
export const finishCopy = (
  bytes: Uint8Array,
  { open, tables, choices, toldIn }: CopyRequest,
  lists: readonly CopiedList[],
  { summary, foot, gone }: { readonly summary: string; readonly foot: string; readonly gone: LeftOutContent },
): Uint8Array => {
  const pkg = new Package(bytes, open.codec, open.limits ?? FILE_LIMITS);
  const workbook = findWorkbookPart(pkg);
  const { sheets } = readWorkbookPart(pkg, workbook);
  const partOf = (name: string): string => sheets.find((sheet) => sheet.name === name)!.part;
  for (const { channels, own } of lists) {
    const part = partOf(channels.sheet);
    raiseRows(pkg, part, own.texts);
    printList(pkg, workbook, { sheet: channels.sheet, part }, own.block, {
      paper: choices.paper,
      foot,
      titles: titleRows(channels.sheet, channels.headerRow, channels.headerRows, channels.firstColumn),
    });
  }
  printLookedUp(pkg, workbook, { tables, choices, sheets }, foot);
  openOnSheet(pkg, workbook, summary);
  if (choices.protect) for (const { part } of sheets) lockSheet(pkg, part);
  passPrivate(pkg, workbook, sheets, choices);
  trimStrings(pkg, readWorkbookPart(pkg, workbook));
  sweep(pkg);
  verifyEdits(pkg, workbook, new Map());
  const [left] = stillThere(pkg, gone);
  if (left) throw new HostProblem(TOLD_WORDS[toldIn].stillThere(left.text.slice(0, 60), left.part), 'unsupported');
  const saved = pkg.save();
  verifyFile(pkg, saved);
  return saved;
};

/** Lists of sensors, mounts and the like, of which nobody has said how they are printed. */
const printLookedUp = (
  pkg: Package,
  workbook: string,
  { tables, choices, sheets }: Pick<CopyRequest, 'tables' | 'choices'> & { readonly sheets: readonly SheetEntry[] },
  foot: string,
): void => {
  const done = new Set(tablesOfEachList(tables).map(({ channels }) => channels.sheet));
  for (const list of [tables.sensors, tables.mounts, tables.cables, tables.inputs, tables.limits]) {
    const part = sheets.find(({ name }) => name === list?.sheet)?.part;
    if (!list || part === undefined || done.has(list.sheet) || hasPrintSetup(pkg, part)) continue;
    done.add(list.sheet);
    const { sheet, headerRow, headerRows, lastRow, firstColumn, lastColumn } = list;
    const block = { row: headerRow, rows: lastRow - headerRow + 1, column: firstColumn, columns: lastColumn - firstColumn + 1 }; // prettier-ignore
    setUpPrint(pkg, part, choices.paper, foot, pagesWideFor(pkg, part, block, choices.paper));
    const titles = titleRows(sheet, headerRow, headerRows, firstColumn);
    setSheetName(pkg, workbook, sheet, '_xlnm.Print_Titles', (before) => titlesWith(before, titles));
  }
};

/** The set-up of the sheet's user is kept; its print area takes our columns in. */
const printList = (
  pkg: Package,
  workbook: string,
  { sheet, part }: { readonly sheet: string; readonly part: string },
  block: RangeAddress,
  { paper, foot, titles }: { readonly paper: CopyRequest['choices']['paper']; readonly foot: string; readonly titles: string }, // prettier-ignore
): void => {
  if (hasPrintSetup(pkg, part)) widenPrint(pkg, part, block);
  else setUpPrint(pkg, part, paper, foot, pagesWideFor(pkg, part, block, paper));
  setSheetName(pkg, workbook, sheet, '_xlnm.Print_Titles', (before) => titlesWith(before, titles));
  setSheetName(pkg, workbook, sheet, '_xlnm.Print_Area', (before) => areaWith(before, sheet, block));
};
