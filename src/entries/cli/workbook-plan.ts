import { openFile } from '../../adapters/xlsx/file-on-disk';
import type { WorkbookFile } from '../../adapters/xlsx/workbook-file';
import type { ChannelCheck } from '../../plan/check';
import type { Language } from '../../core/language';
import { TABLES } from '../../plan/fields';
import type { Cell } from '../../functions/define';
import { FUNCTIONS } from '../../functions/index';
import { cellAddress } from '../../workbook/address';
import { channelLists, channelSheets, listsOf, placeOfRow as placeIn } from '../../workbook/channel-lists';
import { parseMapping } from '../../workbook/mapping';
import { findOwnBlock } from '../../workbook/own-columns';
import { judgePlan, type JudgedPlan } from '../../workbook/plan-of';
import type { Notice } from '../../workbook/plan-view';
import type { SheetContent } from '../../workbook/port';
import { recognise, type RecognisedTables } from '../../workbook/recognise';
import { limitRowsOf } from '../../workbook/limit-rows';
import { personsNotes } from '../../workbook/plan-notes/persons-notes';
import { NOTES_SETTING } from '../../workbook/plan-notes/record';
import { isNotesSheet, NO_NOTES, type PlanNotes } from '../../workbook/report/plan-notes';
import type { PlanTables } from '../../workbook/row-sources';
import { withStockSheet } from '../../workbook/stock/read-stock';
import { MAPPING_SETTING } from '../../workbook/session';
import { SESSION_WORDS } from '../../workbook/words';
import type { Mapping } from '../../workbook/tables';
import { mappingWithLists } from './lists-option';
import { CommandProblem } from './status';
import { withStock } from './stock-option';

/** A workbook on disk with the plan that was found in it. */
export interface WorkbookPlan {
  readonly path: string;
  readonly file: WorkbookFile;
  readonly tables: PlanTables;
  readonly contentOf: (sheet: string) => SheetContent;
  readonly judged: JudgedPlan;
  /** Cells that could not be read, in the words of a reader's language. */
  readonly unreadIn: (language: Language) => readonly Notice[];
  /** What a person should do before the plan can be judged in full. */
  readonly advice: readonly string[];
  /** How the columns and lists were said to be read, where that is to be kept in the workbook. */
  readonly said?: Mapping;
  /** How a sensor list was laid out for it. */
  readonly stocked?: readonly string[];
}

export interface OpenOptions {
  /** Sheets that the channel list is spread over, or "all" that have one. */
  readonly lists?: readonly string[];
  /** A workbook, or a sheet of the plan's, with the sensors to look up. */
  readonly stock?: string;
}

export const FUNCTION_NAMES = FUNCTIONS.map(({ name }) => name);

interface CellPlace {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** Formulas without a stored value, as a program that does not calculate writes them. */
const uncalculated = (tables: RecognisedTables, contentOf: (sheet: string) => SheetContent): CellPlace[] => {
  const found: CellPlace[] = [];
  for (const { sheet, firstRow, lastRow, columns } of TABLES.flatMap((name) => listsOf(tables, name))) {
    const { values, formulas, row: top, column: left } = contentOf(sheet);
    for (let row = firstRow; row <= lastRow; row++)
      for (const { column } of columns.values())
        if (formulas[row - top]?.[column - left] && (values[row - top]?.[column - left] ?? null) === null)
          found.push({ sheet, row, column });
  }
  return found;
};

/** What our formulas find there, and how it is told. */
const UNKNOWN = { cells: { error: '#N/A' }, told: { error: 'formula without a stored value' } } as const;
const MOST_NAMED = 5;

/** Where nobody knows what a formula gives, the cell counts as one that cannot be read: what needs it is INCOMPLETE. */
const withUnknown = (content: SheetContent, places: readonly CellPlace[], cell: Cell): SheetContent => {
  const values = [...content.values];
  const copied = new Set<number>();
  for (const { row, column } of places) {
    const at = row - content.row;
    if (!copied.has(at)) values[at] = [...(values[at] ?? [])];
    copied.add(at);
    (values[at] as Cell[])[column - content.column] = cell;
  }
  return { ...content, values };
};

const adviceFor = (places: readonly CellPlace[], outcome: string): string => {
  const named = places.slice(0, MOST_NAMED).map(({ sheet, row, column }) => `${sheet}!${cellAddress(row, column)}`);
  const more = places.length > MOST_NAMED ? ` and ${places.length - MOST_NAMED} more` : '';
  return `${named.join(', ')}${more}: read a formula without a stored value, expected the value; ${outcome}. Open the workbook in a spreadsheet program, save it there and check again.`;
};

export const openPlan = async (
  path: string,
  mapping: Mapping | undefined,
  { stock, ...options }: OpenOptions = {},
): Promise<WorkbookPlan> => {
  const file = await openFile(path, FUNCTION_NAMES);
  if (stock === undefined) return planIn(path, file, mapping, options);
  const { file: stocked, told } = await withStock(path, file, stock, FUNCTION_NAMES);
  const kept = withStockSheet(mapping ?? parseMapping(file.getSetting(MAPPING_SETTING)));
  const plan = planIn(path, stocked, kept, options);
  return { ...plan, said: plan.said ?? kept, stocked: told };
};

export const planIn = (
  path: string,
  file: WorkbookFile,
  mapping: Mapping | undefined,
  { lists }: OpenOptions = {},
): WorkbookPlan => {
  const contents = new Map<string, SheetContent>();
  const contentOf = (sheet: string): SheetContent => {
    const known = contents.get(sheet) ?? file.readSheet(sheet, { formulaTexts: false });
    contents.set(sheet, known);
    return known;
  };
  const sheets = file.sheets.map((info) => ({ info, content: contentOf(info.name) }));
  const kept = mapping ?? parseMapping(file.getSetting(MAPPING_SETTING));
  const said = lists && mappingWithLists(path, sheets, kept, lists);
  const found = recognise(sheets, { mapping: said ?? kept });
  const { channels, limits } = found;
  if (!channels) throw new CommandProblem(`${path}: ${SESSION_WORDS.en.noList}`);
  for (const { sheet, headerRow, headerRows, firstRow, lastRow } of channelLists(found)) {
    if (lastRow < firstRow)
      throw new CommandProblem(`${path}: the channel list on sheet ${sheet} has headings but no rows.`);
    // Pieces of our columns are told from columns of the user's by their formulas.
    const header = contentOf(sheet).values[headerRow + headerRows - 1 - contentOf(sheet).row];
    if (findOwnBlock(header ?? []).kind === 'pieces') contents.set(sheet, file.readSheet(sheet));
  }
  const missing = uncalculated(found, contentOf);
  const ofLimits = missing.filter(({ sheet }) => sheet === limits?.sheet);
  if (limits && ofLimits.length > 0)
    throw new CommandProblem(`${path}: ${adviceFor(ofLimits, 'without its limits no channel can be judged')}`);
  const told = new Map<string, SheetContent>();
  for (const sheet of new Set(missing.map((place) => place.sheet))) {
    const places = missing.filter((place) => place.sheet === sheet);
    told.set(sheet, withUnknown(contentOf(sheet), places, UNKNOWN.told));
    contents.set(sheet, withUnknown(contentOf(sheet), places, UNKNOWN.cells));
  }
  const tables: PlanTables = {
    ...found,
    channels,
    limitRows: limits && limitRowsOf(limits, contentOf(limits.sheet)),
  };
  const judgedIn = (language?: Language) => judgePlan(found, (sheet) => told.get(sheet) ?? contentOf(sheet), language);
  const judged = judgedIn();
  return {
    path,
    file,
    tables,
    contentOf,
    judged,
    unreadIn: (language) => (language === 'en' || judged.unread.length === 0 ? judged : judgedIn(language)).unread,
    ...(said && { said }),
    advice: missing.length > 0 ? [adviceFor(missing, 'every channel that needs it is INCOMPLETE')] : [],
  };
};

/** "Channels!A7" of a channel row. */
export const placeOfRow = ({ tables }: WorkbookPlan, id: number): string => {
  const { sheet, row, column } = placeIn(tables, id)!;
  return `${sheet}!${cellAddress(row, column)}`;
};

/** "Wing, Tail": the sheets of the channel list. */
export const listNames = ({ tables }: Pick<WorkbookPlan, 'tables'>): string => channelSheets(tables).join(', ');

/** Rows of the channel sheet and their checks, in the order of the list. */
export const checksOf = ({ judged }: WorkbookPlan): readonly (readonly [row: number, check: ChannelCheck])[] => [
  ...judged.byRow,
];

/** What the workbook's own sheet of notes says: who made the plan, its state, its assumptions. */
export const notesOf = ({ file, contentOf }: WorkbookPlan): PlanNotes => {
  const sheet = file.sheets.find(({ name }) => isNotesSheet(name));
  return sheet ? personsNotes(contentOf(sheet.name), file.getSetting(NOTES_SETTING)) : NO_NOTES;
};
