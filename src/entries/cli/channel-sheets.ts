import { nodeCodec } from '../../adapters/xlsx/codec-node';
import { putPlots } from '../../adapters/xlsx/chart-parts';
import { FILE_LIMITS } from '../../adapters/xlsx/limits';
import { fitHeights } from '../../adapters/xlsx/summary-sheet';
import { openWorkbook, type WorkbookFile } from '../../adapters/xlsx/workbook-file';
import type { Language } from '../../core/language';
import { channelInputs } from '../../workbook/channel-inputs';
import { CHANNEL_COLUMNS, channelPage } from '../../workbook/channel-page';
import { CHANNEL_SHEETS_SETTING, channelSheetName, ownChannelSheets } from '../../workbook/channel-sheet-names';
import { onSheet, withSummarySheet } from './summary-page';
import { usageProblem } from './status';
import { checksOf, FUNCTION_NAMES, type WorkbookPlan } from './workbook-plan';

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
    const names = current.sheets.map((sheet) => sheet.name);
    const own = ownChannelSheets(current.getSetting(CHANNEL_SHEETS_SETTING));
    const name = channelSheetName(names, own, check.channel.id);
    if (!current.sheets.some((sheet) => sheet.name === name))
      current = reopened(withSummarySheet(current.save(), name));
    const page = channelPage(name, check, plan.judged.limits, language, channelInputs(plan, row, language));
    current.edit(page.changes);
    current.setSetting(CHANNEL_SHEETS_SETTING, JSON.stringify([...new Set([...own, name])].sort()));
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
