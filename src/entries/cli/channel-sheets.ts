import { nodeCodec } from '../../adapters/xlsx/codec-node';
import { putPlots } from '../../adapters/xlsx/chart-parts';
import { FILE_LIMITS } from '../../adapters/xlsx/limits';
import { fitHeights } from '../../adapters/xlsx/summary-sheet';
import { openWorkbook, type WorkbookFile } from '../../adapters/xlsx/workbook-file';
import type { Language } from '../../core/language';
import { fieldByKey, fieldsOf, type TableName } from '../../plan/fields';
import { fieldTitle } from '../../plan/words/titles';
import { CHANNEL_COLUMNS, channelPage, type ChannelInputs } from '../../workbook/channel-page';
import { isoDate } from '../../workbook/report/supply-sections';
import type { RecognisedTable } from '../../workbook/tables';
import { onSheet, withSummarySheet } from './summary-page';
import { usageProblem } from './status';
import { checksOf, FUNCTION_NAMES, type WorkbookPlan } from './workbook-plan';

/** Remembers the sheets that were made here, so that one of the user's is never taken for ours. */
const SHEETS_SETTING = 'channelwright.channel-sheets';
const LONGEST_NAME = 31;

const ownSheets = (file: WorkbookFile): readonly string[] => {
  try {
    const kept: unknown = JSON.parse(file.getSetting(SHEETS_SETTING) ?? '[]');
    return Array.isArray(kept) ? kept.filter((name) => typeof name === 'string') : [];
  } catch {
    return [];
  }
};

/** "Channel W001", or with a number behind where a sheet of the user's has that name. */
const sheetName = (file: WorkbookFile, id: string): string => {
  const taken = new Set(file.sheets.map(({ name }) => name.toLowerCase()));
  const own = new Set(ownSheets(file));
  const stem = `Channel ${id.replace(/[[\]:*?/\\']/g, '-')}`;
  for (let n = 1; ; n++) {
    const end = n === 1 ? '' : ` ${n}`;
    const name = stem.slice(0, LONGEST_NAME - end.length) + end;
    if (own.has(name) || !taken.has(name.toLowerCase())) return name;
  }
};

const PARTS: readonly (readonly [table: TableName, key: 'sensor' | 'mount' | 'cable' | 'input'])[] = [
  ['sensors', 'sensor'],
  ['mounts', 'mount'],
  ['cables', 'cable'],
  ['inputs', 'input'],
];

/** What stands in the channel's row and in the rows of the parts that it names. */
const inputsOf = (plan: WorkbookPlan, row: number, language: Language): readonly ChannelInputs[] => {
  const { tables, contentOf, judged } = plan;
  const named = judged.byRow.get(row)?.channel.named ?? {};
  const textAt = (table: RecognisedTable, at: number, key: string): string => {
    const isDate = fieldByKey(table.table, key).kind === 'date';
    const content = contentOf(table.sheet);
    const use = table.columns.get(key);
    const cell = use && content.values[at - content.row]?.[use.column - content.column];
    if (cell === null || cell === undefined) return '';
    if (isDate && typeof cell === 'number') return isoDate(cell);
    return typeof cell === 'object' ? cell.error : `${String(cell)}${use?.unitText && typeof cell === 'number' ? ` ${use.unitText}` : ''}`; // prettier-ignore
  };
  const rowNamed = (table: RecognisedTable, key: string, name: string): number | undefined => {
    for (let at = table.firstRow; at <= table.lastRow; at++)
      if (textAt(table, at, key).trim().toLowerCase() === name.trim().toLowerCase()) return at;
    return undefined;
  };
  const cellsOf = (table: RecognisedTable, at: number) =>
    fieldsOf(table.table).flatMap(({ key }) => {
      const typed = textAt(table, at, key);
      return typed === '' ? [] : [[fieldTitle(table.table, key, language), typed] as const];
    });
  const lists = PARTS.flatMap(([name, key]) => {
    const table = tables[name];
    const part = named[key];
    const at = table && part !== undefined ? rowNamed(table, key, part) : undefined;
    return table && at !== undefined ? [{ title: table.sheet, cells: cellsOf(table, at) }] : [];
  });
  return [{ title: tables.channels.sheet, cells: cellsOf(tables.channels, row) }, ...lists];
};

/** Adds or renews a sheet for each of the channels named, with all there is to know of it. */
export const withChannelSheets = (
  file: WorkbookFile,
  plan: WorkbookPlan,
  ids: readonly string[],
  language: Language,
): WorkbookFile => {
  let current = file;
  for (const id of ids) {
    const found = checksOf(plan).find(([, { channel }]) => channel.id.toLowerCase() === id.trim().toLowerCase());
    if (!found)
      throw usageProblem(`${plan.path}: no channel is named "${id}"; the list begins with ${firstNames(plan)}.`);
    const [row, check] = found;
    const name = sheetName(current, check.channel.id);
    if (!current.sheets.some((sheet) => sheet.name === name))
      current = reopened(withSummarySheet(current.save(), name));
    const page = channelPage(name, check, plan.judged.limits, language, inputsOf(plan, row, language));
    current.edit(page.changes);
    current.setSetting(SHEETS_SETTING, JSON.stringify([...new Set([...ownSheets(current), name])].sort()));
    current = reopened(
      onSheet(current.save(), name, (pkg, sheet) => {
        fitHeights(pkg, sheet, page.cells, CHANNEL_COLUMNS);
        putPlots(pkg, sheet, page.plots);
      }),
    );
  }
  return current;
};

const reopened = (bytes: Uint8Array): WorkbookFile =>
  openWorkbook(bytes, { codec: nodeCodec, functionNames: FUNCTION_NAMES, limits: FILE_LIMITS });

const firstNames = (plan: WorkbookPlan): string =>
  checksOf(plan)
    .slice(0, 3)
    .map(([, { channel }]) => channel.id)
    .join(', ');
