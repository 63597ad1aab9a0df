import { foldWords } from './heading-text';
import { LANGUAGES } from './words/languages';

type Words = ReadonlySet<string>;
type Sets = Readonly<Record<string, readonly string[]>>;

export interface Phrase {
  readonly slots: readonly Words[];
  readonly written: string;
  readonly weak: boolean;
  /** Never enough to take a column by itself. */
  readonly isAsked: boolean;
  readonly wantsUnit: boolean;
  readonly wantsRange: boolean;
}

const fold = (text: string): string => foldWords(text).join('');

const SETS = new Map<string, Words>();
/** Lists mix languages: a set holds the words of all of them. */
const setOf = (name: string): Words => {
  let found = SETS.get(name);
  if (!found) {
    found = new Set(LANGUAGES.flatMap(({ sets }) => (sets[name] ?? []).map(fold)));
    SETS.set(name, found);
  }
  return found;
};
/** A word of these stands for all of them in a phrase of several words: "Temp. coefficient", "Accelerometer mass". */
const ALWAYS = ['frequency', 'temperature', 'sensor'] as const;

const slotOf = (piece: string, isAlone: boolean): Words => {
  const set = /^<(.*)>$/.exec(piece)?.[1];
  if (set !== undefined) return setOf(set);
  const word = fold(piece);
  const known = isAlone ? undefined : ALWAYS.find((name) => setOf(name).has(word));
  return known === undefined ? new Set([word]) : setOf(known);
};

const compile = (written: string, sets: Sets): Phrase => {
  const mark = /\s(\?\??|!|\.\.)$/.exec(written)?.[1];
  const body = mark === undefined ? written : written.slice(0, -mark.length).trim();
  const pieces = body.split(/\s+/);
  return {
    slots: pieces.map((piece) => slotOf(piece, pieces.length === 1)),
    written: pieces.map((piece) => sets[/^<(.*)>$/.exec(piece)?.[1] ?? '']?.[0] ?? piece).join(' '),
    weak: mark === '?',
    isAsked: mark === '??',
    wantsUnit: mark === '!',
    wantsRange: mark === '..',
  };
};

const PHRASES = new Map<string, Phrase[]>();
export const VOCABULARY: Set<string> = new Set();
const FILLER = new Set<string>();
/** A piece is numbered by the same words wherever it stands. */
const SAME_WORDS: Readonly<Record<string, string>> = { 'channels.serial': 'sensors.serial' };
for (const { sets, phrases, filler } of LANGUAGES) {
  for (const [field, list] of Object.entries(phrases)) {
    const compiled = list.map((written) => compile(written, sets));
    for (const known of [field, SAME_WORDS[field]])
      if (known) PHRASES.set(known, [...(PHRASES.get(known) ?? []), ...compiled]);
    for (const { slots } of compiled) for (const slot of slots) for (const word of slot) VOCABULARY.add(word);
  }
  for (const word of filler) FILLER.add(fold(word));
}
const OTHERS = new Set(LANGUAGES.flatMap(({ others }) => others.map(fold)));
const PARTS = new Set(LANGUAGES.flatMap(({ parts }) => parts.map(fold)));

export const phrasesOf = (field: string): readonly Phrase[] => PHRASES.get(field) ?? [];
export const isFiller = (word: string): boolean => FILLER.has(word);
const bare = (word: string): string => word.replace(/\.+$/, '');
/** Words such as "measured": the column tells what came out, or where the test stops, not what is planned. */
export const tellsOther = (words: readonly string[]): boolean => words.some((word) => OTHERS.has(bare(word)));
/** Words for a part of the chain: a quantity below them is the part's, not the channel's. */
export const tellsPart = (words: readonly string[]): boolean => words.some((word) => PARTS.has(bare(word)));

const splits = new Map<string, readonly (readonly [string, string])[]>();
/** The ways in which a word is two known words, as in fmax or Sensortyp. */
const splitsOf = (joined: string): readonly (readonly [string, string])[] => {
  let found = splits.get(joined);
  if (!found) {
    found = Array.from(
      { length: joined.length - 1 },
      (_, at) => [joined.slice(0, at + 1), joined.slice(at + 1)] as const,
    ).filter(([head, tail]) => VOCABULARY.has(head) && VOCABULARY.has(tail));
    if (splits.size > 10_000) splits.clear();
    splits.set(joined, found);
  }
  return found;
};
/** Whether the words of the slots, written together, make up this one. */
export const isTogether = ([first, second, ...others]: Phrase['slots'], joined: string): boolean => {
  if (!first || others.length > 0 || joined.length > 40) return false;
  return second
    ? splitsOf(joined).some(([a, b]) => (first.has(a) && second.has(b)) || (second.has(a) && first.has(b)))
    : first.has(joined);
};
