import type { Language } from '../../core/language';
import type { ChannelCheck } from '../../plan/check';
import { DEFAULT_ORIGIN, type Limits } from '../../plan/limits';
import { cellAddress } from '../address';
import { limitLines } from '../limit-lines';
import type { Notice } from '../plan-view';
import { assumedIn } from '../report/assumed';
import type { Fact } from '../report/plan-notes';
import { REPORT_WORDS } from '../report/words';
import { inert } from '../summary';
import { NOTE_WORDS } from './words';

/** A line that the tool fills: the same key means the same line, whatever it says now. */
export interface NoteLine {
  readonly key: string;
  readonly topic: string;
  readonly text: string;
}

export interface NotesOf {
  readonly checks: readonly ChannelCheck[];
  readonly limits: Limits;
  readonly readings: readonly Notice[];
}

/** Facts that the tool asks for; a person knows them. */
const ASKED: readonly Fact[] = ['revision', 'prepared', 'checked'];
export const DATE_KEY = 'date';
export const HEADINGS: readonly string[] = ['assumptions', 'readings'];

const placed = ({ at }: Notice): string => (at ? `${at.sheet}!${cellAddress(at.row, at.column)}` : '');

/** What the block says between its first and last line; facts that stand elsewhere on the sheet are not asked again. */
export const noteLines = (
  { checks, limits, readings }: NotesOf,
  given: { readonly language: Language; readonly date: string; readonly said: ReadonlySet<Fact> },
): readonly NoteLine[] => {
  const { language, date, said } = given;
  const words = NOTE_WORDS[language];
  const { facts, limitNames } = REPORT_WORDS[language];
  const defaults = limitLines(limits)
    .filter(({ origin }) => origin.includes(DEFAULT_ORIGIN))
    .map(({ name }) => limitNames[name] ?? name);
  const lines: NoteLine[] = [
    ...ASKED.filter((fact) => !said.has(fact)).map((fact) => ({ key: fact, topic: facts[fact], text: '' })),
    { key: DATE_KEY, topic: words.date, text: date },
    { key: 'assumptions', topic: words.assumptions, text: '' },
    ...assumedIn(checks, limits, language).map(([key, text]) => ({
      key: `assumed ${key}`,
      topic: words.topics[key],
      text,
    })),
    ...(defaults.length > 0
      ? [{ key: 'assumed limits', topic: words.topics.limits, text: words.defaults(defaults.join('; ')) }]
      : []),
    ...(readings.length > 0 ? [{ key: 'readings', topic: words.readings, text: '' }] : []),
    ...readings.map((notice) => {
      const topic = placed(notice);
      return { key: `reading ${topic} ${notice.text}`, topic, text: notice.text };
    }),
  ];
  return lines.map(({ key, topic, text }) => ({ key, topic: inert(topic), text: inert(text) }));
};
