import type { InLanguages, Language } from '../core/language';
import type { Verdict } from '../core/verdict';
import type { AcrossFinding, Finding } from './finding';
import { ENGLISH } from './words/sentences/english';
import { FRENCH } from './words/sentences/french';
import { GERMAN } from './words/sentences/german';

export type Sentences<F extends Finding = Finding> = {
  readonly [C in F['check']]: (finding: Extract<F, { check: C }>) => string;
};
/** What is said of points, housings, inputs and dates of several rows. */
export type RowsTogether = Sentences<
  Exclude<AcrossFinding, { check: 'added masses' | 'control count' | 'control verdict' | 'same channel' }>
>;

const SENTENCES: InLanguages<Sentences> = { en: ENGLISH, de: GERMAN, fr: FRENCH };

/** Number first, then the reason, then what would help. */
export const sentenceOf = <F extends Finding>(finding: F, language: Language = 'en'): string =>
  (SENTENCES[language][finding.check] as (f: Finding) => string)(finding);

const SEVERITY: readonly Verdict[] = ['FAIL', 'INCOMPLETE', 'WARN'];

/** Everything that keeps a row from a plain PASS, worst first; "" when there is nothing. */
export const reasonText = (findings: readonly Finding[], language: Language = 'en'): string =>
  SEVERITY.flatMap((verdict) =>
    gapsJoined(findings.filter((f) => f.verdict === verdict)).map((finding) => sentenceOf(finding, language)),
  ).join(' ');

/** A field that several headlines lack is told once. */
const gapsJoined = (findings: readonly Finding[]): readonly Finding[] => {
  const gaps = findings.filter((finding) => finding.check === 'missing');
  const [first] = gaps;
  if (!first || gaps.length === 1) return findings;
  const fields = [...new Set(gaps.flatMap((gap) => gap.fields))];
  return [...findings.filter((finding) => finding.check !== 'missing'), { ...first, headline: undefined, fields }];
};
