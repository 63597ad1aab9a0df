import type { Language } from '../core/language';
import type { Verdict } from '../core/verdict';
import type { AcrossRows } from './rules/rows';
import { sentenceOf } from './sentence';
import { GROUP_WORDS, groupedAs, groupSentence, memberOf } from './words/sentences/across-groups';

/** What is told of several rows in one line. */
export interface AcrossLine {
  readonly verdict: Verdict;
  readonly text: string;
  /** Places of their channels in the plan. */
  readonly rows: readonly number[];
  /** The findings one by one, where the line stands for several. */
  readonly parts: readonly AcrossRows[];
}

/** Two of a kind are told one by one. */
const LEAST = 3;
/** More names than these nobody reads in a line. */
const MOST_NAMES = 12;

/** Findings across rows without those that pass, many of one kind and verdict in one line. */
export const acrossLines = (found: readonly AcrossRows[], language: Language = 'en'): readonly AcrossLine[] => {
  const words = GROUP_WORDS[language];
  const groups = new Map<string, AcrossRows[]>();
  found.forEach((each, i) => {
    if (each.finding.verdict === 'PASS') return;
    const key = groupedAs(each.finding) ?? String(i);
    const group = groups.get(key);
    if (group) group.push(each);
    else groups.set(key, [each]);
  });
  return [...groups.values()].flatMap((group): AcrossLine[] => {
    if (group.length < LEAST)
      return group.map(({ finding, rows }) => ({
        verdict: finding.verdict,
        text: sentenceOf(finding, language),
        rows,
        parts: [],
      }));
    const { finding } = group[0]!;
    const names = group.map((each) => memberOf(each.finding, words));
    const rest = names.length - MOST_NAMES;
    const shown = rest > 1 ? words.more(names.slice(0, MOST_NAMES).join(', '), rest) : names.join(', ');
    return [
      {
        verdict: finding.verdict,
        text: groupSentence(finding, group.length, shown, words),
        rows: group.flatMap(({ rows }) => rows),
        parts: group,
      },
    ];
  });
};
