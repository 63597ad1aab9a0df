import { basename, extname } from 'node:path';
import type { Language } from '../../core/language';
import { htmlReport, type Paper } from '../../workbook/report/html';
import { markdownReport } from '../../workbook/report/markdown';
import type { PlanReport } from './judged';
import { usageProblem } from './status';
import { Pen } from './terminal';
import { textReport } from './text-report';

const TEXT_COLUMNS = 100;

/** The report of one or several plans in the form that the file's name asks for: page, plain text or Markdown. */
export const reportFile = (
  path: string,
  reports: readonly PlanReport[],
  { language, paper, plots }: { readonly language: Language; readonly paper: Paper; readonly plots: 'open' | 'all' },
): string => {
  const ending = extname(path).toLowerCase();
  if (ending === '.html' || ending === '.htm') {
    const [report] = reports;
    if (!report || reports.length > 1)
      throw usageProblem(`--report ${path}: a page holds one plan; name one plan, or a report in .md or .txt.`);
    const checks = report.rows.map(({ check }) => check);
    return htmlReport(basename(report.path), report.content, { language, paper, plots, checks, limits: report.limits });
  }
  const of = (report: PlanReport) =>
    ending === '.txt'
      ? textReport(report, TEXT_COLUMNS, new Pen(false))
      : markdownReport(basename(report.path), report.content);
  return reports.map(of).join('\n');
};
