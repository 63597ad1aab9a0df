import type { Language } from '../../core/language';
import type { JudgedSource } from '../channel-inputs';
import { judgePlan } from '../plan-of';
import { channelSheets } from '../channel-lists';
import { reportContent } from './content';
import { htmlReport, type Paper } from './html';
import { markdownReport } from './markdown';
import type { PlanNotes } from './plan-notes';

export interface ReportAsked {
  readonly kind: 'page' | 'markdown';
  readonly language: Language;
  readonly paper: Paper;
  /** What the report says of itself: name of the file or the list. */
  readonly name: string;
  readonly notes: PlanNotes;
}

/** The report of a plan as text: a page to print, or Markdown. `spoken` is the language of what was judged already. */
export const makeReport = (source: JudgedSource, spoken: Language, asked: ReportAsked): string => {
  const { kind, language, paper, name, notes } = asked;
  const { tables, contentOf } = source;
  const judged = language === spoken ? source.judged : judgePlan(tables, contentOf, language);
  const { byRow, limits, unread } = judged;
  const checks = [...byRow.values()];
  const content = reportContent({ checks, limits, unread }, channelSheets(tables).join(', '), { language, notes });
  return kind === 'markdown'
    ? markdownReport(name, content)
    : htmlReport(name, content, { language, paper, plots: 'open', checks, limits });
};
