import { acrossLines } from '../../plan/across-groups';
import { acrossRows } from '../../plan/rules-across';
import { VERDICTS, type Verdict } from '../../core/verdict';
import { planningAid } from '../../plan/words/cautions';
import { verdictCounts } from '../../workbook/report/verdict-sections';
import { worstFirst } from '../../workbook/annotate';
import type { PlanReport, Row } from './judged';
import { Pen, plainLine } from './terminal';
import { hanging } from './wrap';

const VERDICT_WIDTH = Math.max(...VERDICTS.map((verdict) => verdict.length));
const MOST_NAME = 18;
const MOST_PLACE = 26;

const fit = (text: string, width: number): string =>
  text.length > width ? `${text.slice(0, width - 1)}…` : text.padEnd(width);

const placeOf = ({ check: { channel } }: Row): string =>
  plainLine([`${channel.point ?? ''}${channel.direction ?? ''}`, channel.group].filter(Boolean).join(' · '));

/** A plan as a table of verdicts with reasons, worst first. */
export const textReport = (report: PlanReport, columns: number, pen: Pen): string => {
  const { rows, limits } = report;
  const checks = rows.map(({ check }) => check);
  const together = [...acrossLines(acrossRows(checks, limits))].sort(worstFirst);
  const names = rows.map(({ check }) => plainLine(check.channel.id));
  const longest = (texts: readonly string[], most: number) =>
    Math.min(
      most,
      texts.reduce((length, text) => Math.max(length, text.length), 0),
    );
  const nameWidth = Math.max(longest(names, MOST_NAME), 'Channel'.length);
  const placeWidth = longest(rows.map(placeOf), MOST_PLACE);
  const line = (name: string, place: string, verdict: string, reason: string, ink?: Verdict): string => {
    const start = [fit(name, nameWidth), ...(placeWidth > 0 ? [fit(place, placeWidth)] : [])].join('  ') + '  ';
    const word = verdict.padEnd(VERDICT_WIDTH);
    const whole = hanging(`${start}${word}  `, reason, columns);
    return (ink ? start + pen.verdict(ink, word) + whole.slice(start.length + word.length) : whole).replace(
      / +$/gm,
      '',
    );
  };
  const ordered = rows.map((row, i) => ({ row, name: names[i]!, verdict: row.check.verdict })).sort(worstFirst);
  const bulleted = (texts: readonly string[]) => texts.map((text) => hanging('  ', plainLine(text), columns));
  return [
    pen.strong(`${plainLine(report.path)}: ${rows.length} channels on “${plainLine(report.list)}”`),
    `  ${verdictCounts(checks)}`,
    '',
    pen.strong(line('Channel', 'Place', 'Verdict', 'Reason')),
    ...ordered.map(({ row, name, verdict }) =>
      line(name, placeOf(row), verdict, plainLine(row.reasons.map(({ sentence }) => sentence).join(' ')), verdict),
    ),
    ...section(pen, 'Rows taken together', bulleted(together.map(({ verdict, text }) => `${verdict}: ${text}`))),
    ...section(pen, 'Could not be read; counts as not known', bulleted(report.unread)),
    ...section(pen, 'Cautions', bulleted(report.cautions.map(({ title, text }) => `${title}. ${text}`))),
    ...section(pen, 'Done', bulleted(report.done)),
    '',
    hanging('', planningAid('en'), columns),
    '',
  ].join('\n');
};

const section = (pen: Pen, title: string, lines: readonly string[]): readonly string[] =>
  lines.length === 0 ? [] : ['', pen.strong(title), ...lines];
