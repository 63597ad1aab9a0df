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
export const reasonsOf = (check: ChannelCheck, limits: Limits): readonly Reason[] => {
  const findings = findingsOf(check, limits).filter(({ verdict }) => verdict !== 'PASS');
  const gaps = findings.filter((finding) => finding.check === 'missing');
  const fields = [...new Set(gaps.flatMap((gap) => gap.fields))];
  const joined: Finding[] = gaps[0] ? [{ ...gaps[0], headline: undefined, fields }] : [];
  return [...findings.filter(({ check: kind }) => kind !== 'missing'), ...joined]
    .sort(worstFirst)
    .map((finding) => ({ verdict: finding.verdict, sentence: sentenceOf(finding) }));
};

/** What a note on a verdict cell says. */
export const noteText = (check: ChannelCheck, limits: Limits): string =>
  [
    `Channel ${check.channel.id}: ${check.verdict}`,
    ...reasonsOf(check, limits).map(({ verdict, sentence }) => `${verdict}: ${sentence}`),
  ].join('\n');

/** Notes on the verdict cells (0-based column) of all rows that are not PASS. */
export const noteChanges = (
  { sheet, firstRow, lastRow, skippedRows }: RecognisedTable,
  verdictColumn: number,
  judged: JudgedPlan,
): Extract<Change, { kind: 'note' }>[] => {
  const skipped = new Set(skippedRows);
  const notes: Extract<Change, { kind: 'note' }>[] = [];
  for (let row = firstRow; row <= lastRow; row++) {
    const check = skipped.has(row) ? undefined : judged.byRow.get(row);
    if (check && check.verdict !== 'PASS')
      notes.push({ kind: 'note', sheet, row, column: verdictColumn, text: noteText(check, judged.limits) });
  }
  return notes;
};

/** Takes what we wrote before off the verdict cells, notes above all: they may be out of date. */
export const clearVerdicts = ({ sheet, firstRow, lastRow }: RecognisedTable, verdictColumn: number): Change => ({
  kind: 'clear',
  sheet,
  range: { row: firstRow, column: verdictColumn, rows: lastRow - firstRow + 1, columns: 1 },
});
