import { markedIn, countIn, type Language } from '../../core/language';
import { VERDICTS, type Verdict } from '../../core/verdict';
import type { ChannelCheck } from '../../plan/check';
import { acrossLines } from '../../plan/across-groups';
import { acrossRows } from '../../plan/rules-across';
import { cellAddress } from '../address';
import { reasonsOf, worstFirst } from '../annotate';
import type { Limits } from '../../plan/limits';
import type { Notice } from '../plan-view';
import { HEADLINES } from '../results';
import { groupedBy, shortList, type Line, type Section } from './section';
import { REPORT_WORDS } from './words';

export const WORST_FIRST: readonly Verdict[] = [...VERDICTS].reverse();

/** More rows than this would bury those that matter; the channel list holds them all. */
export const MOST_DECISIONS = 200;

const count = (checks: readonly { readonly verdict: Verdict }[], verdict: Verdict): number =>
  checks.filter((check) => check.verdict === verdict).length;
const countsOf = (checks: readonly { readonly verdict: Verdict }[]): number[] => [
  ...WORST_FIRST.map((verdict) => count(checks, verdict)),
  checks.length,
];
const isOpen = ({ verdict }: ChannelCheck): boolean => verdict === 'FAIL' || verdict === 'INCOMPLETE';

/** "3 FAIL, 0 INCOMPLETE, …" */
export const verdictCounts = (checks: readonly { readonly verdict: Verdict }[], language: Language = 'en'): string =>
  WORST_FIRST.map((verdict) => `${countIn(count(checks, verdict), language)} ${verdict}`).join(', ');

/** Share with one decimal; a plan without channels has none. */
const share = (part: number, whole: number, language: Language): string | null =>
  whole === 0 ? null : markedIn(((100 * part) / whole).toFixed(1), language);

/** A judged plan as reports need it; checks in the order of the list. */
export interface Reported {
  readonly checks: readonly ChannelCheck[];
  readonly limits: Limits;
  readonly unread: readonly Notice[];
}

export const verdictSections = (reported: Reported, language: Language): readonly Section[] => {
  const words = REPORT_WORDS[language];
  const { checks } = reported;
  const parts = groupedBy(checks, ({ channel }) => channel.group?.trim() ?? '');
  return [
    {
      key: 'counts',
      title: words.counts.title,
      text: words.counts.text,
      columns: [words.counts.count, words.counts.share],
      lines: WORST_FIRST.map((verdict): Line => {
        const found = count(checks, verdict);
        return [verdict, words.meaning[verdict], found, share(found, checks.length, language)];
      }),
      verdicts: 'names',
    },
    {
      key: 'parts',
      title: words.parts.title,
      text: words.parts.text,
      columns: [...WORST_FIRST, words.parts.all],
      lines: [
        ...[...parts].map(([part, of]): Line => {
          const open = of.filter(isOpen).map(({ channel }) => channel.id);
          return [part || words.noPart, shortList(open, words.more) || words.none, ...countsOf(of)];
        }),
        [words.parts.allChannels, '', ...countsOf(checks)],
      ],
      hasTotal: true,
    },
    {
      key: 'checks',
      title: words.checks.title,
      text: words.checks.text,
      columns: [...WORST_FIRST],
      lines: HEADLINES.map((headline): Line => {
        const verdicts = checks.map((check) => check[headline]);
        return [
          words.headlines[headline],
          words.headlineQuestions[headline],
          ...WORST_FIRST.map((verdict) => count(verdicts, verdict)),
        ];
      }),
    },
    decisions(reported, language),
    together(reported, language),
    {
      key: 'unread',
      title: words.unread.title,
      text: words.unread.text,
      columns: [],
      lines: reported.unread
        .slice(0, MOST_DECISIONS)
        .map(({ text, at }): Line => [at ? `${at.sheet}!${cellAddress(at.row, at.column)}` : '', text]),
    },
  ];
};

const decisions = ({ checks, limits }: Reported, language: Language): Section => {
  const words = REPORT_WORDS[language];
  const open = checks.filter(({ verdict }) => verdict !== 'PASS').sort(worstFirst);
  const lines = open.slice(0, MOST_DECISIONS).map((check): Line => [
    check.channel.id,
    reasonsOf(check, limits, language)
      .map(({ sentence }) => sentence)
      .join(' '),
    check.verdict,
    ...HEADLINES.map((headline) => check[headline].verdict),
  ]);
  const more = open.length - lines.length;
  return {
    key: 'decisions',
    title: words.decisions.title,
    text: words.decisions.text,
    columns: [words.decisions.channel, ...HEADLINES.map((headline) => words.headlines[headline])],
    lines: [
      ...lines,
      ...(more > 0 ? [['', words.moreRows(more)]] : []),
      ...(open.length === 0 ? [['', words.nothingOpen]] : []),
    ],
    verdicts: 'columns',
  };
};

const together = ({ checks, limits }: Reported, language: Language): Section => {
  const words = REPORT_WORDS[language];
  return {
    key: 'together',
    title: words.together.title,
    text: words.together.text,
    columns: [words.together.verdict],
    lines: [...acrossLines(acrossRows(checks, limits), language)]
      .sort(worstFirst)
      .slice(0, MOST_DECISIONS)
      .map(({ verdict, text, rows }): Line => {
        const channels = rows.map((row) => checks[row]!.channel.id);
        return [shortList(channels, words.more), text, verdict];
      }),
    verdicts: 'columns',
  };
};

/** Every channel in the order of the list. */
export const allChannels = ({ checks, limits }: Reported, language: Language): Section => {
  const words = REPORT_WORDS[language];
  return {
    key: 'channels',
    title: words.allChannels.title,
    text: words.allChannels.text,
    columns: [words.parts.title, words.allChannels.place, words.together.verdict],
    lines: checks.map((check): Line => {
      const { id, group, point, direction } = check.channel;
      const reasons = reasonsOf(check, limits, language).map(({ sentence }) => sentence);
      return [id, reasons.join(' '), group ?? '', `${point ?? ''}${direction ?? ''}`, check.verdict];
    }),
    verdicts: 'columns',
  };
};
