import { cellAddress } from '../../../workbook/address';
import type { ShareChoices } from '../../../workbook/share/choices';
import { COPY_WORDS, listedPlaces, type ToldWords } from '../../../workbook/share/told-words';
import type { FormulaNames } from '../formula-names';
import type { Package } from '../package';
import { dropCalculationOrder } from '../workbook-edit';
import { readWorkbookPart } from '../workbook-part';
import { passCells } from './cell-pass';
import { LeftOut } from './left-out';
import type { CopiedList } from './copy-request';
import { dropMetadata, hasCubes } from './metadata-pass';
import { dropNotes, hidePeople } from './note-pass';
import { notesOn } from '../notes-read';
import { cutLinks, cutMacros, isMacroSheet, outsideOf } from './outside';
import { passCharts, passPivots } from './picture-pass';
import { passSections } from './sheet-pass';
import { sweep } from './sweep';
import { passTables, shrinkTables } from './table-pass';
import { passWorkbook } from './workbook-pass';

export interface Cleaning {
  readonly choices: ShareChoices;
  readonly lists: readonly CopiedList[];
  /** Our overview of an earlier check, which a new one replaces. */
  readonly oldSummary: string | undefined;
  readonly names: FormulaNames;
  readonly words: ToldWords;
}

/** Takes out of the package what was chosen, and makes values of what cannot stay a formula. Returns what to tell. */
export const cleanCopy = (pkg: Package, workbook: string, cleaning: Cleaning): string[] => {
  const { choices, lists, oldSummary, names, words } = cleaning;
  const before = readWorkbookPart(pkg, workbook);
  const leftOut = leftOutOf(pkg, workbook, cleaning);
  const frozen: string[] = [];
  const noted: string[] = [];
  let rules = 0;
  const pivots = passPivots(pkg, workbook, before.sheets, leftOut, choices.dropLinks);
  for (const sheet of before.sheets) {
    if (leftOut.hasSheet(sheet.name)) continue;
    const working = lists.flatMap(({ channels, own }) => (channels.sheet === sheet.name ? own.working : []));
    if (working.length > 0) shrinkTables(pkg, sheet, (column) => working.includes(column));
    const heading = passTables(pkg, sheet, leftOut, COPY_WORDS[choices.language].leftOut, choices.freezeAll);
    const isOwn = (formula: string): boolean => names.isOwn(formula);
    const cells = passCells(pkg, sheet, leftOut, { freezeAll: choices.freezeAll, isOwn, heading });
    frozen.push(...cells.frozen);
    const hidden = leftOut.columnsOf(sheet.name).filter((column) => !working.includes(column));
    rules += passSections(pkg, sheet, leftOut, hidden).rules;
    dropNotes(pkg, sheet, (column) => choices.dropNotes || leftOut.hasColumn(sheet.name, column));
    noted.push(...notesOn(pkg, sheet.part).map(({ row, column }) => `${sheet.name}!${cellAddress(row, column)}`));
  }
  const outside = outsideOf(pkg, workbook);
  const isGone = (sheet: string, id: string | undefined): boolean =>
    leftOut.hasSheet(sheet) || isMacroSheet(pkg, workbook, id);
  const removed = passWorkbook(pkg, workbook, leftOut, isGone).names.filter((name) => !name.startsWith('_'));
  const { sheets } = readWorkbookPart(pkg, workbook);
  dropCalculationOrder(pkg, workbook);
  const hasData = hasCubes(pkg, workbook) && choices.dropLinks;
  if (hasData) dropMetadata(pkg, workbook, sheets);
  if (choices.dropLinks) cutLinks(pkg, workbook, sheets);
  cutMacros(pkg, workbook);
  sweep(pkg);
  const charts = passCharts(pkg, leftOut);
  const people = choices.keepPeople ? 0 : hidePeople(pkg, sheets, workbook, COPY_WORDS[choices.language].author);
  const chosen = frozen.filter((place) => oldSummary === undefined || !place.startsWith(`${oldSummary}!`));
  return [
    ...(chosen.length > 0 ? [words.frozen(chosen.length, listedPlaces(chosen, words))] : []),
    ...(rules > 0 ? [words.rules(rules)] : []),
    ...(charts > 0 ? [words.charts(charts)] : []),
    ...(pivots > 0 ? [words.pivots(pivots)] : []),
    ...(removed.length > 0 ? [words.names(listedPlaces(removed, words))] : []),
    ...(outside.links > 0 ? [choices.dropLinks ? words.linksCut(outside.links) : words.linksKept(outside.links)] : []),
    ...(outside.connections ? [choices.dropLinks ? words.connectionsCut : words.connectionsKept] : []),
    ...(hasData ? [words.cubes] : []),
    ...(outside.macros ? [words.macrosCut] : []),
    ...(noted.length > 0 ? [words.notesStay(listedPlaces(noted, words))] : []),
    ...(people > 0 ? [words.people(people)] : []),
  ];
};

/** What is chosen to be left out, and with it our working columns and the overview of an earlier check. */
const leftOutOf = (pkg: Package, workbook: string, { choices, lists, oldSummary, names }: Cleaning): LeftOut =>
  new LeftOut(
    pkg,
    readWorkbookPart(pkg, workbook),
    {
      dropLinks: choices.dropLinks,
      leftOutColumns: [...choices.leftOutColumns, ...places(lists, 'working')],
      leftOutSheets: [...choices.leftOutSheets, ...(oldSummary === undefined ? [] : [oldSummary])],
    },
    names,
    places(lists, 'renamed'),
  );

const places = (lists: readonly CopiedList[], what: 'working' | 'renamed') =>
  lists.flatMap(({ channels: { sheet }, own }) => own[what].map((column) => ({ sheet, column })));
