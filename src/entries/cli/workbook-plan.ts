import { openFile } from '../../adapters/xlsx/file-on-disk';
import type { WorkbookFile } from '../../adapters/xlsx/workbook-file';
import type { ChannelCheck } from '../../plan/check';
import { FUNCTIONS } from '../../functions/index';
import { cellAddress } from '../../workbook/address';
import { parseMapping } from '../../workbook/mapping';
import { judgePlan, type JudgedPlan } from '../../workbook/plan-of';
import type { SheetContent } from '../../workbook/port';
import { limitRowsOf, recognise, type RecognisedTables } from '../../workbook/recognise';
import type { PlanTables } from '../../workbook/row-sources';
import { MAPPING_SETTING, NO_LIST } from '../../workbook/session';
import type { Mapping } from '../../workbook/tables';
import { CommandProblem } from './status';

/** A workbook on disk with the plan that was found in it. */
export interface WorkbookPlan {
  readonly path: string;
  readonly file: WorkbookFile;
  readonly tables: PlanTables;
  readonly contentOf: (sheet: string) => SheetContent;
  readonly judged: JudgedPlan;
}

export const FUNCTION_NAMES = FUNCTIONS.map(({ name }) => name);

/** Formulas without a stored value, as a program that does not calculate writes them: nothing could be checked on them. */
const uncalculated = (tables: RecognisedTables, contentOf: (sheet: string) => SheetContent): string[] => {
  const found: string[] = [];
  for (const { sheet, firstRow, lastRow, columns } of Object.values(tables)) {
    const { values, formulas, row: top, column: left } = contentOf(sheet);
    for (let row = firstRow; row <= lastRow; row++)
      for (const { column } of columns.values())
        if (formulas[row - top]?.[column - left] && (values[row - top]?.[column - left] ?? null) === null)
          found.push(`${sheet}!${cellAddress(row, column)}`);
  }
  return found;
};

export const openPlan = async (path: string, mapping: Mapping | undefined): Promise<WorkbookPlan> => {
  const file = await openFile(path, FUNCTION_NAMES);
  const contents = new Map<string, SheetContent>();
  const contentOf = (sheet: string): SheetContent => {
    const known = contents.get(sheet) ?? file.readSheet(sheet, { formulaTexts: false });
    contents.set(sheet, known);
    return known;
  };
  const found = recognise(
    file.sheets.map((info) => ({ info, content: contentOf(info.name) })),
    { mapping: mapping ?? parseMapping(file.getSetting(MAPPING_SETTING)) },
  );
  const { channels, limits } = found;
  if (!channels) throw new CommandProblem(`${path}: ${NO_LIST}`);
  if (channels.lastRow < channels.firstRow)
    throw new CommandProblem(`${path}: the channel list on sheet ${channels.sheet} has headings but no rows.`);
  const missing = uncalculated(found, contentOf);
  if (missing.length > 0)
    throw new CommandProblem(
      `${path} ${missing[0]}: read a formula without a stored value${missing.length > 1 ? ` (and ${missing.length - 1} more)` : ''}, expected the value. Open the workbook in a spreadsheet program, save it there and check again.`,
    );
  const tables: PlanTables = {
    ...found,
    channels,
    limitRows: limits && limitRowsOf(limits, contentOf(limits.sheet)),
  };
  return { path, file, tables, contentOf, judged: judgePlan(found, contentOf) };
};

/** "Channels!A7" of a channel row. */
export const placeOfRow = ({ tables: { channels } }: WorkbookPlan, row: number): string =>
  `${channels.sheet}!${cellAddress(row, channels.columns.get('channel')?.column ?? channels.firstColumn)}`;

/** Rows of the channel sheet and their checks, in the order of the list. */
export const checksOf = ({ judged }: WorkbookPlan): readonly (readonly [row: number, check: ChannelCheck])[] => [
  ...judged.byRow,
];
