import { HostProblem, type RangeAddress } from '../../../workbook/port';
import { COPY_WORDS, TOLD_WORDS } from '../../../workbook/share/told-words';
import { SUMMARY_COLUMNS, type SummaryPage } from '../../../workbook/summary';
import { putCharts } from '../chart-parts';
import { FILE_LIMITS } from '../limits';
import { Package } from '../package';
import { fitHeights, type SheetPrint } from '../summary-sheet';
import { verifyEdits, verifyFile } from '../verify';
import { findWorkbookPart, readWorkbookPart } from '../workbook-part';
import type { CopiedList, CopyRequest } from './copy-request';
import { raiseRows } from './row-heights';
import { hasPrintSetup, lockSheet, pagesWideFor, setUpPrint, widenPrint } from './print-setup';
import { passPrivate } from './private-parts';
import { stillThere, type LeftOutContent } from './remaining';
import { trimStrings } from './strings-trim';
import { sweep } from './sweep';
import { areaWith, setSheetName, titlesWith, titleRows } from './workbook-pass';

/** Print set-up, heights, charts, locks and properties; then nothing private may be left, which is looked for. */
export const finishCopy = (
  bytes: Uint8Array,
  { open, choices, toldIn }: CopyRequest,
  lists: readonly CopiedList[],
  parts: {
    readonly summary: string;
    readonly page: SummaryPage;
    readonly print: SheetPrint;
    readonly gone: LeftOutContent;
  },
): Uint8Array => {
  const pkg = new Package(bytes, open.codec, open.limits ?? FILE_LIMITS);
  const workbook = findWorkbookPart(pkg);
  const { sheets, relationSpace } = readWorkbookPart(pkg, workbook);
  const partOf = (name: string): string => sheets.find((sheet) => sheet.name === name)!.part;
  const overview = { name: parts.summary, part: partOf(parts.summary), relationSpace };
  const cells = parts.page.changes.flatMap((change) => (change.kind === 'cells' ? change.cells : []));
  fitHeights(pkg, overview, cells, SUMMARY_COLUMNS.slice(0, 2));
  putCharts(pkg, overview, parts.page.charts);
  for (const { channels, own } of lists) {
    const part = partOf(channels.sheet);
    raiseRows(pkg, part, own.texts);
    printList(pkg, workbook, { sheet: channels.sheet, part }, own.block, {
      paper: choices.paper,
      foot: COPY_WORDS[choices.language].page,
      titles: titleRows(channels.sheet, channels.headerRow, channels.headerRows, channels.firstColumn),
    });
  }
  if (choices.protect) for (const { part } of sheets) lockSheet(pkg, part);
  passPrivate(pkg, workbook, sheets, choices);
  trimStrings(pkg, readWorkbookPart(pkg, workbook));
  sweep(pkg);
  verifyEdits(pkg, workbook, new Map());
  const [left] = stillThere(pkg, parts.gone);
  if (left) throw new HostProblem(TOLD_WORDS[toldIn].stillThere(left.text.slice(0, 60), left.part), 'unsupported');
  const saved = pkg.save();
  verifyFile(pkg, saved);
  return saved;
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
