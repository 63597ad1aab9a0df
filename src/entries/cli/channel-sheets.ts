import type { WorkbookFile } from '../../adapters/xlsx/workbook-file';
import type { Language } from '../../core/language';
import { channelInputs } from '../../workbook/channel-inputs';
import { channelPage } from '../../workbook/channel-page';
import { CHANNEL_SHEETS_SETTING, channelSheetName, ownChannelSheets } from '../../workbook/channel-sheet-names';
import { usageProblem } from './status';
import { checksOf, type WorkbookPlan } from './workbook-plan';

/** Adds or renews a sheet for each of the channels named, with all there is to know of it. */
export const writeChannelSheets = (
  file: WorkbookFile,
  plan: WorkbookPlan,
  ids: readonly string[],
  language: Language,
): void => {
  for (const id of ids) {
    const found = checksOf(plan).find(([, { channel }]) => channel.id.toLowerCase() === id.trim().toLowerCase());
    if (!found)
      throw usageProblem(`${plan.path}: no channel is named "${id}"; the list begins with ${firstNames(plan)}.`);
    const [row, check] = found;
    const own = ownChannelSheets(file.getSetting(CHANNEL_SHEETS_SETTING));
    const name = channelSheetName(
      file.sheets.map((sheet) => sheet.name),
      own,
      check.channel.id,
    );
    file.edit(channelPage(name, check, plan.judged.limits, language, channelInputs(plan, row, language)));
    file.setSetting(CHANNEL_SHEETS_SETTING, JSON.stringify([...new Set([...own, name])].sort()));
  }
};

const firstNames = (plan: WorkbookPlan): string =>
  checksOf(plan)
    .slice(0, 3)
    .map(([, { channel }]) => channel.id)
    .join(', ');
