import type { InLanguages, Language } from '../core/language';
import { VERDICTS, type Verdict } from '../core/verdict';
import type { ChannelCheck } from '../plan/check';
import type { Finding } from '../plan/finding';
import { findingsOf } from '../plan/findings';
import type { Limits } from '../plan/limits';
import { sentenceOf } from '../plan/sentence';
import type { JudgedPlan } from './plan-of';
import type { Change } from './port';
import type { RecognisedTable } from './tables';

/** One thing that keeps a channel from a plain PASS: the number, its limit, the cause and what would help. */
export interface Reason {
  readonly verdict: Verdict;
  readonly sentence: string;
}

export const worstFirst = (a: { readonly verdict: Verdict }, b: { readonly verdict: Verdict }): number =>
  VERDICTS.indexOf(b.verdict) - VERDICTS.indexOf(a.verdict);

/** Everything that keeps a channel from a plain PASS, worst first. A field that several headlines lack is told once. */
export const reasonsOf = (check: ChannelCheck, limits: Limits, language: Language = 'en'): readonly Reason[] => {
  const findings = findingsOf(check, limits).filter(({ verdict }) => verdict !== 'PASS');
  const gaps = findings.filter((finding) => finding.check === 'missing');
  const fields = [...new Set(gaps.flatMap((gap) => gap.fields))];
  const joined: Finding[] = gaps[0] ? [{ ...gaps[0], headline: undefined, fields }] : [];
  return [...findings.filter(({ check: kind }) => kind !== 'missing'), ...joined]
    .sort(worstFirst)
    .map((finding) => ({ verdict: finding.verdict, sentence: sentenceOf(finding, language) }));
};

const CHANNEL: InLanguages<string> = { en: 'Channel', de: 'Kanal', fr: 'Voie' };

/** What a note on a verdict cell says. */
export const noteText = (check: ChannelCheck, limits: Limits, language: Language = 'en'): string =>
  [
    `${CHANNEL[language]} ${check.channel.id}: ${check.verdict}`,
    ...reasonsOf(check, limits, language).map(({ verdict, sentence }) => `${verdict}: ${sentence}`),
  ].join('\n');

/** More notes than this make a workbook slow to open in every program; the reason stands beside each verdict anyway. */
export const MOST_NOTES = 5000;

/** Notes on the verdict cells (0-based column) of the rows that are not PASS; of very many, on the worst. */
export const noteChanges = (
  { sheet, firstRow, lastRow, skippedRows }: RecognisedTable,
  verdictColumn: number,
  judged: JudgedPlan,
  language: Language = 'en',
): Extract<Change, { kind: 'note' }>[] => {
  const skipped = new Set(skippedRows);
  const open = [...judged.byRow]
    .filter(([row, { verdict }]) => row >= firstRow && row <= lastRow && !skipped.has(row) && verdict !== 'PASS')
    .sort(([, a], [, b]) => worstFirst(a, b))
    .slice(0, MOST_NOTES);
  return open
    .sort(([a], [b]) => a - b)
    .map(([row, check]) => ({
      kind: 'note',
      sheet,
      row,
      column: verdictColumn,
      text: noteText(check, judged.limits, language),
    }));
};

/** Takes what we wrote before off the verdict cells, notes above all: they may be out of date. */
export const clearVerdicts = ({ sheet, firstRow, lastRow }: RecognisedTable, verdictColumn: number): Change => ({
  kind: 'clear',
  sheet,
  range: { row: firstRow, column: verdictColumn, rows: lastRow - firstRow + 1, columns: 1 },
});
