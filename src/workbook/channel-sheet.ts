import type { Language } from '../core/language';
import { channelInputs, type JudgedSource } from './channel-inputs';
import { channelPage } from './channel-page';
import { CHANNEL_SHEETS_SETTING, channelSheetName, ownChannelSheets } from './channel-sheet-names';
import type { Spreadsheet } from './port';

/** Makes or renews a sheet that shows the channel in this row whole, as one action; returns its name. */
export const writeChannelSheet = async (
  spreadsheet: Spreadsheet,
  source: JudgedSource,
  row: number,
  language: Language,
): Promise<string | undefined> => {
  const check = source.judged.byRow.get(row);
  if (!check) return undefined;
  const own = ownChannelSheets(await spreadsheet.getSetting(CHANNEL_SHEETS_SETTING));
  const names = (await spreadsheet.sheets()).map(({ name }) => name);
  const sheet = channelSheetName(names, own, check.channel.id);
  const inputs = channelInputs(source, row, language);
  const isThere = names.includes(sheet);
  const changes = channelPage(sheet, check, source.judged.limits, language, inputs);
  await spreadsheet.apply(
    changes.filter(({ kind }) => isThere || kind !== 'clear'),
    { label: sheet },
  );
  await spreadsheet.setSetting(CHANNEL_SHEETS_SETTING, JSON.stringify([...new Set([...own, sheet])].sort()));
  return sheet;
};
