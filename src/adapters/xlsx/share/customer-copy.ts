import { HostProblem } from '../../../workbook/port';
import { onList, tablesOfEachList } from '../../../workbook/channel-lists';
import { refuseOccupied } from '../../../workbook/check';
import { copyContent, overviewWords } from '../../../workbook/share/copy-content';
import { ownChanges, VERDICT_SIGN } from '../../../workbook/share/own-changes';
import { COPY_WORDS, listedPlaces, TOLD_WORDS } from '../../../workbook/share/told-words';
import { storedSummary, summaryPage, SUMMARY_SETTING } from '../../../workbook/summary';
import type { Change } from '../../../workbook/port';
import { VERDICTS } from '../../../core/verdict';
import { FormulaNames } from '../formula-names';
import { FILE_LIMITS } from '../limits';
import { editWithNotes } from '../notes-around';
import { Package } from '../package';
import { addSummarySheet } from '../summary-sheet';
import { openWorkbook } from '../workbook-file';
import { findWorkbookPart, readWorkbookPart } from '../workbook-part';
import { cleanCopy } from './clean-copy';
import type { CopiedList, CopyRequest, CustomerCopy } from './copy-request';
import { finishCopy } from './finish-copy';
import { LeftOut } from './left-out';
import { footOf, PAPER_NUMBER } from './print-setup';
import { leftOutContent } from './remaining';

/** A workbook for a customer: opens anywhere without the add-in, and holds nothing that was chosen to stay at home. */
export const customerCopy = (request: CopyRequest): CustomerCopy => {
  const { bytes, open, tables, contentOf, judged, notes, choices, toldIn } = request;
  const words = TOLD_WORDS[toldIn];
  refuseList(request);
  const lists = tablesOfEachList(tables).map((list, i): CopiedList => {
    refuseOccupied(list, contentOf(list.channels.sheet));
    const ofList = { ...judged, byRow: onList(judged.byRow, i) };
    return { channels: list.channels, own: ownChanges(list, contentOf, ofList, choices.language) };
  });
  const pkg = new Package(bytes, open.codec, open.limits ?? FILE_LIMITS);
  const workbook = findWorkbookPart(pkg);
  const book = readWorkbookPart(pkg, workbook);
  const names = new FormulaNames(open.functionNames);
  const stored = storedSummary(openWorkbook(bytes, open).getSetting(SUMMARY_SETTING));
  const oldSummary = stored !== undefined && book.allSheetNames.includes(stored) ? stored : undefined;
  const gone = leftOutContent(pkg, book, new LeftOut(pkg, book, choices, names), overviewWords(choices.language));
  const told = cleanCopy(pkg, workbook, { choices, lists, oldSummary, names, words });
  const summary = freeSheetName(
    readWorkbookPart(pkg, workbook).allSheetNames,
    COPY_WORDS[choices.language].summarySheet,
  );
  const print = { paper: PAPER_NUMBER[choices.paper], foot: footOf(choices, notes) };
  addSummarySheet(pkg, workbook, summary, print);
  const file = openWorkbook(pkg.save(), open);
  const page = summaryPage(summary, copyContent(judged, tables, notes, choices), undefined, choices.language);
  file.edit(page.map(withSigns));
  const occupied = editWithNotes(
    file,
    lists.flatMap(({ own }) => own.changes),
    lists.flatMap(({ own }) => own.notes),
  );
  if (occupied.length > 0) told.push(words.noted(listedPlaces(occupied, words)));
  const stale = file.dependents();
  if (stale.length > 0) told.push(words.stale(listedPlaces(stale, words)));
  const made = finishCopy(file.save(), request, lists, { summary, foot: print.foot, gone });
  if (gone.also.length > 0) told.push(words.also(listedPlaces(gone.also, words)));
  if (choices.protect) told.push(words.locked);
  return {
    bytes: made,
    told: [...lists.flatMap(({ own }) => own.told(words)), ...told],
  };
};

/** Without its channels a copy says nothing. */
const refuseList = ({ tables, choices, toldIn }: CopyRequest): void => {
  for (const { channels } of tablesOfEachList(tables)) {
    const isList = (sheet: string): boolean => sheet.toLowerCase() === channels.sheet.toLowerCase();
    const named = channels.columns.get('channel')?.column;
    if (
      choices.leftOutSheets.some(isList) ||
      choices.leftOutColumns.some(({ sheet, column }) => isList(sheet) && column === named)
    )
      throw new HostProblem(TOLD_WORDS[toldIn].keepList, 'unsupported');
  }
};

const freeSheetName = (taken: readonly string[], wanted: string): string => {
  const lower = new Set(taken.map((name) => name.toLowerCase()));
  for (let n = 1; ; n++) {
    const name = n === 1 ? wanted : `${wanted} ${n}`;
    if (!lower.has(name.toLowerCase())) return name;
  }
};

const withSigns = (change: Change): Change =>
  change.kind !== 'marks'
    ? change
    : {
        ...change,
        rules: change.rules.map((rule) => {
          const verdict = VERDICTS.find((word) => word === rule.equals);
          return verdict ? { ...rule, sign: VERDICT_SIGN[verdict] } : rule;
        }),
      };
