import type { Language } from '../core/language';
import type { JudgedSource } from './channel-inputs';
import { channelSheets } from './channel-lists';
import type { Spreadsheet } from './port';
import { reportContent } from './report/content';
import type { PlanNotes } from './report/plan-notes';
import { SUMMARY_SETTING, summaryPage, summarySheetName, usedRange } from './summary';

/** Makes or renews the summary sheet of the plan with its charts, as one action; returns its name. */
export const writeSummarySheet = async (
  spreadsheet: Spreadsheet,
  { tables, judged }: JudgedSource,
  notes: PlanNotes,
  language: Language,
): Promise<string> => {
  const names = (await spreadsheet.sheets()).map(({ name }) => name);
  const sheet = summarySheetName(names, await spreadsheet.getSetting(SUMMARY_SETTING));
  const before = names.includes(sheet) ? usedRange(await spreadsheet.readSheet(sheet)) : undefined;
  const { byRow, limits, unread } = judged;
  const reported = { checks: [...byRow.values()], limits, unread };
  const content = reportContent(reported, channelSheets(tables).join(', '), { language, notes });
  await spreadsheet.apply(summaryPage(sheet, content, before, language), { label: sheet });
  await spreadsheet.setSetting(SUMMARY_SETTING, JSON.stringify(sheet));
  return sheet;
};
