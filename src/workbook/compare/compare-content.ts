import { countIn, type Language } from '../../core/language';
import { VERDICTS, type Verdict } from '../../core/verdict';
import { isChanged, type ChannelChange, type PlanComparison } from '../../plan/compare';
import { causesOf } from '../../plan/compare-causes';
import type { ListChange } from '../../plan/compare-lists';
import type { Finding } from '../../plan/finding';
import { sentenceOf } from '../../plan/sentence';
import { HEADLINES } from '../results';
import { causeText, fieldChangeText, limitChangeText } from './change-text';
import { COMPARE_SECTIONS, COMPARE_WORDS, type CompareSectionKey } from './compare-words';

/** One thing that changed, with what there is to say of it. */
export interface CompareEntry {
  /** A channel, an item of a list, a limit; '' where the sentences say it all. */
  readonly name: string;
  readonly verdicts?: { readonly before?: Verdict; readonly after?: Verdict };
  readonly sentences: readonly string[];
  /** Place of the channel in the new list. */
  readonly channel?: number;
  readonly item?: { readonly table: ListChange['table']; readonly name: string };
}
export interface CompareSection {
  readonly key: CompareSectionKey;
  readonly title: string;
  readonly entries: readonly CompareEntry[];
}
/** A comparison as people read it, laid out by the terminal, the page and the pane. */
export interface CompareContent {
  readonly title: string;
  /** What there is in all, in sentences. */
  readonly outcome: readonly string[];
  readonly sections: readonly CompareSection[];
}

const MOST_NAMES = 8;

/** Where a cause of a changed verdict is looked for; beyond that, finding it by trial takes too long. */
const MOST_CAUSES = 2000;

export const compareContent = (comparison: PlanComparison, language: Language): CompareContent => {
  const words = COMPARE_WORDS[language];
  const entries = entriesOf(comparison, language);
  const sections = COMPARE_SECTIONS.flatMap((key): CompareSection[] =>
    entries[key].length > 0 ? [{ key, title: words.sections[key], entries: entries[key] }] : [],
  );
  return { title: words.title, outcome: outcomeOf(comparison, sections, language), sections };
};

const outcomeOf = (
  comparison: PlanComparison,
  sections: readonly CompareSection[],
  language: Language,
): readonly string[] => {
  const words = COMPARE_WORDS[language];
  const count = (number: number) => countIn(number, language);
  const { counts, changed, respelt } = comparison;
  const moved = ([...VERDICTS].reverse() as Verdict[])
    .filter((verdict) => counts.before[verdict] + counts.after[verdict] > 0)
    .map((verdict) =>
      counts.before[verdict] === counts.after[verdict]
        ? `${verdict} ${count(counts.after[verdict])}`
        : `${verdict} ${count(counts.before[verdict])} → ${count(counts.after[verdict])}`,
    );
  const turned = (turn: 'worse' | 'better') => count(changed.filter(({ verdict }) => verdict?.turn === turn).length);
  return [
    isChanged(comparison) ? `${moved.join(', ')}.` : words.nothing,
    ...sections.map(({ key, title, entries }) => {
      const turns = key === 'verdicts' ? ` (${words.turns(turned('worse'), turned('better'))})` : '';
      return `${words.labelled(title.replace(/ ?\?.*$/, ''), count(entries.length))}${turns}.`;
    }),
    ...(respelt > 0 ? [words.respelt(count(respelt), respelt === 1)] : []),
  ];
};

type Entries = Readonly<Record<CompareSectionKey, readonly CompareEntry[]>>;

const entriesOf = (comparison: PlanComparison, language: Language): Entries => {
  const { before, after, changed, added, removed, lists, limits, across } = comparison;
  const withVerdict = changed.filter(({ verdict }) => verdict);
  const rest = changed.filter(({ verdict }) => !verdict);
  const entry = (change: ChannelChange, isExplained = false) => channelEntry(comparison, change, language, isExplained);
  const told = (finding: Finding, side: 'now' | 'noLonger'): CompareEntry => ({
    name: '',
    sentences: [COMPARE_WORDS[language][side](sentenceOf(finding, language))],
  });
  return {
    verdicts: withVerdict.map((change, i) => entry(change, i < MOST_CAUSES)),
    renamed: changed.filter(({ isRename }) => isRename).map((change) => renameEntry(comparison, change, language)),
    edited: rest.filter(isEdited).map((change) => entry(change)),
    added: added.map((place) => {
      const { channel, verdict } = after.checks[place]!;
      return { name: channel.id, verdicts: { after: verdict }, sentences: whereIs(channel), channel: place };
    }),
    removed: removed.map((place) => {
      const { channel, verdict } = before.checks[place]!;
      return { name: channel.id, verdicts: { before: verdict }, sentences: whereIs(channel) };
    }),
    lists: lists.map((change) => listEntry(comparison, change, language)),
    limits: limits.map((change) => ({ name: '', sentences: [limitChangeText(change, language)] })),
    together: [...across.came.map((finding) => told(finding, 'now')), ...across.gone.map((finding) => told(finding, 'noLonger'))], // prettier-ignore
  };
};

const isEdited = ({ fields, isRename }: ChannelChange): boolean =>
  fields.some(({ key }) => !(isRename && key === 'channel'));

const renameEntry = ({ before, after }: PlanComparison, change: ChannelChange, language: Language): CompareEntry => {
  const old = before.checks[change.before]!.channel.id;
  const { id } = after.checks[change.after]!.channel;
  return { name: id, sentences: [COMPARE_WORDS[language].renamed(old, change.by)], channel: change.after };
};

const whereIs = ({
  point,
  direction,
  location,
  group,
}: {
  readonly point?: string;
  readonly direction?: string;
  readonly location?: string;
  readonly group?: string;
}): readonly string[] => {
  const text = [`${point ?? ''}${direction ?? ''}`, location, group].filter(Boolean).join(' · ');
  return text === '' ? [] : [text];
};

const channelEntry = (
  comparison: PlanComparison,
  change: ChannelChange,
  language: Language,
  isExplained: boolean,
): CompareEntry => {
  const words = COMPARE_WORDS[language];
  const { before, after } = comparison;
  const { verdict, fields, isRename, by } = change;
  const [was, is] = [before.checks[change.before]!, after.checks[change.after]!];
  const sentences: string[] = [];
  if (by === 'order') sentences.push(words.order);
  const edits = fields.filter(({ key }) => !(isRename && key === 'channel'));
  if (edits.length > 0) sentences.push(`${edits.map((edit) => fieldChangeText(edit, language)).join('; ')}.`);
  if (verdict) {
    const turned = HEADLINES.filter((headline) => verdict.headlines.includes(headline));
    const each = turned.map((headline) => `${words.headlines[headline]} ${was[headline].verdict} → ${is[headline].verdict}`); // prettier-ignore
    sentences.push(`${each.join(', ')}.`);
    if (isExplained) {
      const { causes, onlyTogether } = causesOf(comparison, change);
      if (causes.length > 0)
        sentences.push(words.because(causes.map((cause) => causeText(cause, language)).join('; '), onlyTogether && causes.length > 1)); // prettier-ignore
    }
    sentences.push(
      ...verdict.came.map((finding) => words.now(sentenceOf(finding, language))),
      ...verdict.gone.map((finding) => words.noLonger(sentenceOf(finding, language))),
    );
  }
  return {
    name: is.channel.id,
    ...(verdict ? { verdicts: { before: verdict.before, after: verdict.after } } : {}),
    sentences: [...new Set(sentences)],
    channel: change.after,
  };
};

const listEntry = ({ before, after }: PlanComparison, change: ListChange, language: Language): CompareEntry => {
  const words = COMPARE_WORDS[language];
  const { table, name, kind, fields, channels } = change;
  const plan = kind === 'removed' ? before.plan : after.plan;
  const ids = channels.map((place) => plan.channels[place]!.id);
  const named =
    ids.length <= MOST_NAMES
      ? ids.join(', ')
      : words.more(ids.slice(0, MOST_NAMES).join(', '), ids.length - MOST_NAMES);
  const what =
    kind === 'changed'
      ? fields.map((field) => fieldChangeText(field, language)).join('; ')
      : words.listKinds[kind].replace(/^\p{L}/u, (first) => first.toLocaleUpperCase(language));
  return {
    name: `${words.lists[table]} ${words.quoted(name)}`,
    sentences: [
      `${what}.`,
      ids.length > 0 ? words.usedBy(countIn(ids.length, language), ids.length === 1, named) : words.usedByNone,
    ],
    ...(kind === 'removed' ? {} : { item: { table, name } }),
  };
};
