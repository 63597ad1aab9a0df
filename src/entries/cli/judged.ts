import { worstVerdict, type Verdict } from '../../core/verdict';
import { cautionsFor, type Caution } from '../../plan/cautions';
import type { ChannelCheck } from '../../plan/check';
import type { AcrossFinding } from '../../plan/finding';
import { jsonResult } from '../../plan/json-result';
import type { Limits } from '../../plan/limits';
import { acrossRows } from '../../plan/rules-across';
import { sentenceOf } from '../../plan/sentence';
import { limitLines } from '../../workbook/limit-lines';
import { reasonsOf, worstFirst, type Reason } from '../../workbook/annotate';
import type { Notice } from '../../workbook/plan-view';
import { reportContent, type ReportContent, type ReportOptions } from '../../workbook/report/content';

/** One channel as it is printed. */
export interface Row {
  readonly check: ChannelCheck;
  /** Where it stands in the file, in words; '' when its name says enough. */
  readonly at: string;
  readonly reasons: readonly Reason[];
}
/** One plan as it is printed. */
export interface PlanReport {
  readonly path: string;
  /** The list that was found: sheet name, or the file itself. */
  readonly list: string;
  readonly rows: readonly Row[];
  readonly limits: Limits;
  readonly across: readonly {
    readonly verdict: Verdict;
    readonly channels: readonly string[];
    readonly sentence: string;
  }[];
  readonly cautions: readonly Caution[];
  /** Cells that say nothing readable, with their place. */
  readonly unread: readonly string[];
  /** All that a report says, for the renderers that lay it out. */
  readonly content: ReportContent;
  /** What was written, and what a person should know about it. */
  readonly done: readonly string[];
}

/** What there is to say of the channels of one plan, in the order of the list. */
export const reportOf = (
  path: string,
  list: string,
  checks: readonly ChannelCheck[],
  limits: Limits,
  more: {
    readonly at?: (i: number) => string;
    readonly unread: readonly string[];
    readonly notices: readonly Notice[];
    readonly done: readonly string[];
    readonly report?: ReportOptions;
  },
): PlanReport => ({
  path,
  list,
  limits,
  rows: checks.map((check, i) => ({ check, at: more.at?.(i) ?? '', reasons: reasonsOf(check, limits) })),
  across: acrossRows(checks, limits)
    .filter(({ finding }) => finding.verdict !== 'PASS')
    .map(({ finding, rows }: { finding: AcrossFinding; rows: readonly number[] }) => ({
      verdict: finding.verdict,
      channels: rows.map((row) => checks[row]!.channel.id),
      sentence: sentenceOf(finding),
    }))
    .sort(worstFirst),
  cautions: cautionsFor(checks).map(({ caution }) => caution),
  unread: more.unread,
  content: reportContent({ checks, limits, unread: more.notices }, list, more.report ?? { language: 'en' }),
  done: more.done,
});

/** The worst of all channels and of what shows when rows are taken together. */
export const worstOf = ({ rows, across }: PlanReport): Verdict =>
  worstVerdict([...rows.map(({ check }) => check.verdict), ...across.map(({ verdict }) => verdict)]);

/** A plan for programs: numbers under keys that carry their units, reasons as sentences. */
export const jsonOf = (report: PlanReport) => ({
  plan: report.path,
  list: report.list,
  verdict: worstOf(report),
  channels: report.rows.map(({ check, at, reasons }) => ({
    id: check.channel.id,
    ...(at === '' ? {} : { at }),
    ...jsonResult(check, report.limits),
    reasons: reasons.map(({ sentence }) => sentence),
  })),
  rows_together: report.across,
  cautions: report.cautions.map(({ title, text }) => ({ title, text })),
  unread: report.unread,
  limits: limitLines(report.limits).map(({ name, scope, pass, warn, unit, origin }) => ({
    name: name + scope,
    pass,
    warn,
    unit,
    origin,
  })),
});
