import type { Language } from '../../core/language';
import { fromSi } from '../../core/units';
import { limitText, whyNot } from '../../plan/choosing/candidate-reasons';
import { aimWords, marginWords, massWords } from '../../plan/choosing/candidate-words';
import type { Candidate } from '../../plan/choosing/rank';
import { countsWords, openWords, worstWords } from '../../plan/choosing/rank-several';
import type { WaysOut } from '../../plan/choosing/relax';
import { answerSentence } from '../../plan/choosing/relax-answer-words';
import { conflictSentence, relaxationSentence, unknownSentence } from '../../plan/choosing/relax-words';
import type { Limits } from '../../plan/limits';
import type { Channel } from '../../plan/model';
import { sentenceOf } from '../../plan/sentence';
import { planningAid } from '../../plan/words/cautions';
import { CHOOSE_WORDS } from './choose-words';
import { plainLine, type Pen } from './terminal';
import { hanging } from './wrap';

/** Channels that ask the same, or are to have one type, with what the stock has for them. */
export interface Choice {
  readonly channels: readonly Channel[];
  readonly candidates: readonly Candidate[];
  /** One type for all of them, though they ask different things. */
  readonly isTogether?: boolean;
  /** Of the first channel for which nothing reaches a PASS. */
  readonly ways?: WaysOut;
}
export interface ChooseReport {
  readonly path: string;
  readonly choices: readonly Choice[];
  readonly limits: Limits;
  readonly unread: readonly string[];
  readonly top: number;
  readonly language: Language;
}

const MOST_NAMES = 12;
const MOST_NAME = 24;
const LEAST_PARTS = 16;
const INDENT = 2;
const fit = (text: string, width: number): string =>
  text.length > width ? `${text.slice(0, width - 1)}…` : text.padEnd(width);

const partsOf = ({ worst: { combination } }: Candidate): string =>
  [combination.mount, combination.cable, combination.input].map((part) => part?.name ?? '–').join(', ');

const waysLines = (ways: WaysOut, language: Language): readonly string[] => [
  ...(ways.unknown.length > 0 ? [unknownSentence(ways.unknown, language)] : []),
  ...ways.conflicts.map((conflict) => conflictSentence(conflict, language)),
  ...ways.relaxations.map((relaxation) => relaxationSentence(relaxation, language)),
  ...ways.answers.map((answer) => answerSentence(answer, language)),
];

/** Candidates per demand as a table, best first, and what would help where nothing passes. */
export const chooseReport = (report: ChooseReport, columns: number, pen: Pen): string => {
  const { path, choices, unread, language } = report;
  const words = CHOOSE_WORDS[language];
  const bulleted = (lines: readonly string[]) => lines.map((line) => hanging('  ', plainLine(line), columns));
  return [
    pen.strong(plainLine(path)),
    ...choices.flatMap((choice) => ['', ...choiceLines(choice, report, columns, pen)]),
    ...(unread.length === 0 ? [] : ['', pen.strong(words.unread), ...bulleted(unread)]),
    '',
    hanging('', words.margins, columns),
    hanging('', planningAid(language), columns),
    '',
  ].join('\n');
};

/** What limits a type stands below it, for a table with sentences in it fits no terminal. */
const choiceLines = (
  choice: Choice,
  { limits, top, language }: ChooseReport,
  columns: number,
  pen: Pen,
): readonly string[] => {
  const { channels, candidates, ways, isTogether = false } = choice;
  const words = CHOOSE_WORDS[language];
  const names = channels.slice(0, MOST_NAMES).map(({ id }) => plainLine(id));
  const passing = candidates.filter(({ verdict }) => verdict === 'PASS').length;
  const shown = candidates.slice(0, top);
  const mass = ({ mass: kg }: Candidate) => (kg === undefined ? '–' : massWords(kg, language));
  const rows = shown.map((one) =>
    [one.sensor.name, one.verdict, marginWords(one.margin, language), mass(one), partsOf(one)].map(plainLine),
  );
  const fixed = [MOST_NAME, 10, 10, 14];
  const widthOf = (c: number) => Math.max(words.headings[c]!.length, ...rows.map((row) => row[c]!.length));
  const widths = fixed.map((most, c) => Math.min(most, widthOf(c)));
  // The parts take what is left of the line.
  const left = columns - INDENT - widths.reduce((sum, width) => sum + width + 2, 0);
  widths.push(Math.min(widthOf(4), Math.max(LEAST_PARTS, left)));
  const line = (cells: readonly string[]) => cells.map((cell, c) => fit(cell, widths[c]!)).join('  ');
  const below = (one: Candidate): readonly string[] => {
    const limit = limitText(one.worst, limits, language);
    if (!isTogether) return limit === '' ? [] : [limit];
    const worst = worstWords(one, channels, language) ?? '';
    return [countsWords(one, channels, language) ?? '', [worst, limit].filter(Boolean).join(': ')];
  };
  return [
    pen.strong((isTogether ? words.together : words.channels)(names.join(', '), channels.length - names.length, channels.length)), // prettier-ignore
    `  ${words.fitting(passing, candidates.length)}`,
    `  ${pen.strong(line(words.headings).trimEnd())}`,
    ...rows.flatMap((cells, i) => {
      const { verdict } = shown[i]!;
      const start = line(cells);
      const at = widths[0]! + 2;
      const inked = start.slice(0, at) + pen.verdict(verdict, start.slice(at, at + widths[1]!)) + start.slice(at + widths[1]!); // prettier-ignore
      return [`  ${inked}`.trimEnd(), ...below(shown[i]!).map((text) => hanging('      ', plainLine(text), columns))];
    }),
    ...(candidates.length > shown.length ? [`  ${words.more(candidates.length - shown.length)}`] : []),
    ...openTitle(choice, language).map((title) => hanging('  ', plainLine(title), columns)),
    ...(ways ? waysLines(ways, language).map((text) => hanging('    ', plainLine(text), columns)) : []),
  ];
};

const openTitle = ({ channels, candidates, isTogether = false }: Choice, language: Language): readonly string[] => {
  const verdict = candidates[0]?.verdict;
  if (verdict === undefined || verdict === 'PASS') return [];
  if (isTogether) return [openWords(candidates, channels, language)];
  return [verdict === 'WARN' ? CHOOSE_WORDS[language].only : CHOOSE_WORDS[language].nothing];
};

const finite = (value: number | undefined): number | null =>
  value === undefined || !Number.isFinite(value) ? null : value;

const togetherJson = (one: Candidate, channels: readonly Channel[]) => ({
  channels_by_verdict: one.counts,
  worst_channel: one.worst.check.channel.id,
  with: one.fits.map(({ channels: places, fit: { combination, check } }) => ({
    channels: places.map((place) => channels[place]!.id),
    verdict: check.verdict,
    mount: combination.mount?.name ?? null,
    cable: combination.cable?.name ?? null,
    input: combination.input?.name ?? null,
  })),
});

/** The same for programs; margins in dB, masses in gram, null where nothing is known or no limit is in reach. */
export const chooseJson = ({ path, choices, limits, unread, top, language }: ChooseReport) => ({
  plan: path,
  choices: choices.map(({ channels, candidates, ways, isTogether = false }) => ({
    channels: channels.map(({ id }) => id),
    candidates: candidates.slice(0, top).map((one) => ({
      sensor: one.sensor.name,
      verdict: one.verdict,
      margin_dB: finite(one.margin),
      limited_by: one.limiting ? aimWords(one.limiting.aim, language) : null,
      mount: one.worst.combination.mount?.name ?? null,
      cable: one.worst.combination.cable?.name ?? null,
      input: one.worst.combination.input?.name ?? null,
      added_mass_gram: one.mass === undefined ? null : fromSi(one.mass, 'gram'),
      headlines: one.headlines,
      ...(isTogether ? togetherJson(one, channels) : {}),
      margins_dB: Object.fromEntries(one.worst.margins.map(({ aim, dB }) => [aim, finite(dB)])),
      in_stock: one.sensor.quantity ?? null,
      reasons: whyNot(one.worst, limits).map((finding) => sentenceOf(finding, language)),
    })),
    ...(ways
      ? {
          conflicts: ways.conflicts.map((conflict) => ({
            aims: conflict.aims,
            sentence: conflictSentence(conflict, language),
          })),
          relaxations: ways.relaxations.map((one) => ({
            what: one.knob,
            size_dB: finite(one.size),
            sensor: one.fit.combination.sensor.name,
            sentence: relaxationSentence(one, language),
          })),
          answers: ways.answers.map((one) => ({ kind: one.kind, sentence: answerSentence(one, language) })),
          unknown: ways.unknown,
        }
      : {}),
  })),
  unread,
});
