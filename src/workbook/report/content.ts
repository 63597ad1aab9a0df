import { countIn, type Language } from '../../core/language';
import { cautionsFor } from '../../plan/cautions';
import type { ChannelCheck } from '../../plan/check';
import type { Limits } from '../../plan/limits';
import { originWords, reasonWords } from '../../plan/words/limit-origins';
import { planningAid } from '../../plan/words/cautions';
import { limitLines } from '../limit-lines';
import { assumedIn } from './assumed';
import { NO_NOTES, type Fact, type PlanNotes } from './plan-notes';
import { askedSection } from './asked-section';
import { groupedBy, type Line, type Section } from './section';
import { supplySections } from './supply-sections';
import { allChannels, verdictCounts, verdictSections, WORST_FIRST, type Reported } from './verdict-sections';
import { REPORT_WORDS, type ReportWords } from './words';

export interface ReportOptions {
  readonly language: Language;
  readonly notes?: PlanNotes;
}

/** Everything that a report of a plan says, for whoever lays it out: sheet, page or plain text. */
export interface ReportContent {
  readonly title: string;
  /** How many channels, and how they were judged. */
  readonly outcome: string;
  readonly aid: string;
  /** What counts count. */
  readonly unit: string;
  readonly facts: readonly (readonly [label: string, value: string])[];
  /** Those that have something to say, in the order of reading. */
  readonly sections: readonly Section[];
  /** Every channel of the list, for reports that go without it. */
  readonly channels: Section;
}

export const reportContent = (
  reported: Reported,
  source: string,
  { language, notes = NO_NOTES }: ReportOptions,
): ReportContent => {
  const words = REPORT_WORDS[language];
  const { checks } = reported;
  const sections = [
    ...verdictSections(reported, language),
    askedSection(reported, language),
    ...supplySections(checks, language),
    control(checks, words),
    assumptions(checks, reported.limits, notes, language),
    {
      key: 'cautions',
      ...words.cautions,
      columns: [],
      lines: cautionsFor(checks, language).map(({ caution }): Line => [caution.title, caution.text]),
    },
    limits(reported.limits, words, language),
    {
      key: 'legend',
      ...words.legend,
      columns: [],
      lines: WORST_FIRST.map((verdict): Line => [verdict, words.meaning[verdict]]),
      verdicts: 'names',
    },
  ] satisfies readonly Section[];
  return {
    title: words.title,
    outcome: `${words.channels(countIn(checks.length, language), source)}, ${verdictCounts(checks, language)}`,
    aid: planningAid(language),
    unit: words.sensors.channels,
    facts: (Object.entries(words.facts) as [Fact, string][]).flatMap(([fact, label]) => {
      const value = notes.facts[fact];
      return value === undefined ? [] : [[label, value] as const];
    }),
    sections: sections.filter(({ lines }) => lines.length > 0),
    channels: allChannels(reported, language),
  };
};

const control = (checks: readonly ChannelCheck[], words: ReportWords): Section => {
  const controls = checks.filter(({ channel }) => channel.role === 'control');
  const parts = groupedBy(controls, ({ channel }) => channel.group?.trim() ?? '');
  const passing = (of: readonly ChannelCheck[]) => of.filter(({ verdict }) => verdict === 'PASS').length;
  return {
    key: 'control',
    ...words.control,
    columns: [],
    lines: [
      ...[...parts].map(([part, of]): Line => [part || words.noPart, words.controlSome(of.length, passing(of))]),
      ...(controls.length === 0 ? [['', words.controlNone]] : []),
    ],
  };
};

const assumptions = (
  checks: readonly ChannelCheck[],
  given: Limits,
  notes: PlanNotes,
  language: Language,
): Section => ({
  key: 'assumptions',
  ...REPORT_WORDS[language].assumptions,
  columns: [],
  lines: [
    ...notes.assumptions.map(([topic, text]): Line => [topic, text]),
    ...assumedIn(checks, given, language).map(([, sentence]): Line => ['', sentence]),
  ],
});

const limits = (given: Limits, words: ReportWords, language: Language): Section => ({
  key: 'limits',
  title: words.limits.title,
  text: words.limits.text,
  columns: ['PASS', 'WARN', words.limits.unit],
  lines: limitLines(given).map(({ name, scope, pass, warn, unit, origin, reason }): Line => [
    (words.limitNames[name] ?? name) + scope,
    origin.includes('default')
      ? `${originWords(origin, language)}${language === 'fr' ? ' : ' : ': '}${reasonWords(reason, language)}`
      : originWords(origin, language),
    pass,
    warn,
    unit,
  ]),
});
