import { VERDICTS } from '../../core/verdict';
import { planningAid } from '../../plan/words/cautions';
import { LEGEND, limitLines, verdictCounts } from '../../workbook/summary';
import { worstFirst } from '../../workbook/annotate';
import type { PlanReport } from './judged';
import { plainLine } from './terminal';

/** Text from a plan shows as it is: no mark-up, no HTML, no table edge comes out of it. */
const shown = (text: string): string =>
  plainLine(text)
    .replace(/[\\`*_{}[\]<>#|~]/g, '\\$&')
    .replace(/&/g, '&amp;');

const table = (head: readonly string[], lines: readonly (readonly string[])[]): string[] => {
  if (lines.length === 0) return [];
  const row = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
  return [row(head), row(head.map(() => '---')), ...lines.map((line) => row(line.map(shown))), ''];
};
const list = (title: string, lines: readonly string[]): string[] =>
  lines.length === 0 ? [] : [`## ${title}`, '', ...lines.map((line) => `- ${shown(line)}`), ''];

export const markdownReport = (report: PlanReport): string => {
  const ordered = report.rows.map((row) => ({ ...row, verdict: row.check.verdict })).sort(worstFirst);
  const number = (value: number | null) => (value === null ? '' : String(value));
  return [
    `# ${shown(report.path)}`,
    '',
    `${report.rows.length} channels on “${shown(report.list)}”: ${verdictCounts(report.rows.map(({ check }) => check))}.`,
    '',
    planningAid('en'),
    '',
    ...table(
      ['Channel', 'Point', 'Structure part', 'Verdict', 'Reason'],
      ordered.map(({ check: { channel }, verdict, reasons }) => [
        channel.id,
        `${channel.point ?? ''}${channel.direction ?? ''}`,
        channel.group ?? '',
        verdict,
        reasons.map(({ sentence }) => sentence).join(' '),
      ]),
    ),
    ...list(
      'Rows taken together',
      report.across.map(({ verdict, sentence }) => `${verdict}: ${sentence}`),
    ),
    ...list('Could not be read; counts as not known', report.unread),
    ...list(
      'Cautions',
      report.cautions.map(({ title, text }) => `${title}. ${text}`),
    ),
    '## Limits used',
    '',
    ...table(
      ['Limit', 'PASS', 'WARN', 'Unit', 'Where from'],
      limitLines(report.limits).map(({ name, pass, warn, unit, origin }) => [
        name,
        number(pass),
        number(warn),
        unit,
        origin,
      ]),
    ),
    ...list(
      'What the verdicts mean',
      [...VERDICTS].reverse().map((verdict) => `${verdict}: ${LEGEND[verdict]}`),
    ),
    ...list('Done', report.done),
  ].join('\n');
};
