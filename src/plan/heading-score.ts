import { foldWords, type HeadingText } from './heading-text';
import { LANGUAGES } from './words/languages';

interface Phrase {
  readonly slots: readonly ReadonlySet<string>[];
  /** The slots' words written together, as in fmax or Sensortyp. */
  readonly together: ReadonlySet<string>;
  readonly written: string;
  readonly weak: boolean;
  readonly wantsUnit: boolean;
  readonly wantsRange: boolean;
}

const fold = (text: string): string => foldWords(text).join('');
const product = (slots: readonly (readonly string[])[]): string[] =>
  slots.reduce<string[]>((heads, slot) => heads.flatMap((head) => slot.map((word) => head + word)), ['']);

const compile = (written: string, sets: Readonly<Record<string, readonly string[]>>): Phrase => {
  const mark = /\s(\?|!|\.\.)$/.exec(written)?.[1];
  const body = mark === undefined ? written : written.slice(0, -mark.length).trim();
  const choices = body.split(/\s+/).map((piece) => {
    const set = /^<(.*)>$/.exec(piece)?.[1];
    return set === undefined ? [piece] : (sets[set] ?? []);
  });
  const slots = choices.map((words) => words.map(fold));
  const orders = slots.length === 2 ? [slots, [...slots].reverse()] : slots.length === 3 ? [slots] : [];
  return {
    slots: slots.map((words) => new Set(words)),
    together: new Set(slots.length === 1 ? slots[0] : orders.flatMap(product)),
    written: choices.map(([first = '']) => first).join(' '),
    weak: mark === '?',
    wantsUnit: mark === '!',
    wantsRange: mark === '..',
  };
};

const PHRASES = new Map<string, Phrase[]>();
const VOCABULARY = new Set<string>();
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

/** Insertions, deletions, exchanges and swaps of neighbours that turn one word into the other; more than `limit` is just more. */
const editDistance = (a: string, b: string, limit: number): number => {
  if (Math.abs(a.length - b.length) > limit) return limit + 1;
  let before: number[] = [];
  let previous = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const exchange = (previous[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      let best = Math.min(exchange, (previous[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        best = Math.min(best, (before[j - 2] ?? 0) + 1);
      row.push(best);
    }
    before = previous;
    previous = row;
  }
  return previous[b.length] ?? limit + 1;
};

/** 1 for the same word, 0 for another one. */
const similarity = (given: string, plain: string, word: string): number => {
  if (given.endsWith('.') && plain.length >= 3 && word.startsWith(plain)) return 0.95;
  const shorter = Math.min(plain.length, word.length);
  const limit = shorter >= 8 ? 2 : shorter >= 5 ? 1 : 0;
  if (limit === 0) return 0;
  const distance = editDistance(plain, word, limit);
  return distance > limit ? 0 : 1 - distance / (shorter + 1);
};

const matches = new Map<string, ReadonlyMap<string, number>>();
/** The words of the lists that a written word may be. A known word is never taken for a misspelling of another one. */
const matchesOf = (given: string): ReadonlyMap<string, number> => {
  let found = matches.get(given);
  if (found) return found;
  const plain = given.replace(/\.+$/, '');
  if (VOCABULARY.has(plain)) found = new Map([[plain, 1]]);
  else if (FILLER.has(plain) || plain.length > 40) found = new Map();
  else {
    const near = [...VOCABULARY].filter((word) => word[0] === plain[0]);
    found = new Map(
      near.map((word) => [word, similarity(given, plain, word)] as const).filter(([, value]) => value > 0),
    );
  }
  if (matches.size > 10_000) matches.clear();
  matches.set(given, found);
  return found;
};

const weightOf = (word: string): number => {
  const plain = word.replace(/\.+$/, '');
  return FILLER.has(plain) ? 0.04 : /^[0-9.]+$/.test(plain) ? 0.15 : 1;
};
/** Short unknown words in brackets may be a unit that we cannot read: then a quantity is a question. */
const asideWeight = (word: string, isQuantity: boolean): number =>
  FILLER.has(word) ? 0.04 : isQuantity && word.length <= 4 && !VOCABULARY.has(word) ? 0.7 : 0.2;

const scorePhrase = ({ slots, together }: Phrase, words: readonly string[], asides: number): number => {
  const left = [...words];
  const total = () => left.reduce((sum, word) => sum + weightOf(word), 0) + asides;
  const joined = words.map((word) => word.replace(/\.+$/, '')).join('');
  if (joined.length > 1 && together.has(joined)) return slots.length / (slots.length + asides) - 0.01;
  let similar = 0;
  const glued = slots.length > 1 ? left.findIndex((word) => word.length > 2 && together.has(word)) : -1;
  if (glued >= 0) {
    left.splice(glued, 1);
    similar = slots.length - 0.03;
  } else {
    for (const slot of slots) {
      let best = 0;
      let at = -1;
      left.forEach((word, index) => {
        for (const [option, value] of matchesOf(word))
          if (value > best && slot.has(option)) [best, at] = [value, index];
      });
      if (at < 0) return 0;
      similar += best;
      left.splice(at, 1);
    }
  }
  return similar / (slots.length + total());
};

export interface WordScore {
  /** 0..1 */
  readonly score: number;
  readonly phrase: string;
}

const WEAK = 0.78;
const BY_UNIT = 0.9;

interface Facts {
  readonly isQuantity: boolean;
  readonly unitFits: boolean;
  /** Asked only when the words leave it open. */
  readonly hasRanges: () => boolean;
}
const NO_WORDS: WordScore = { score: 0, phrase: '' };

const bestPhrase = (field: string, heading: HeadingText, facts: Facts, overRanges: boolean): WordScore => {
  const asides = heading.asides.reduce((sum, word) => sum + asideWeight(word, facts.isQuantity), 0);
  let best = NO_WORDS;
  for (const phrase of PHRASES.get(field) ?? []) {
    if (phrase.wantsRange !== overRanges || (phrase.wantsUnit && !facts.unitFits)) continue;
    const factor = phrase.weak ? WEAK : phrase.wantsUnit ? BY_UNIT : 1;
    const score = 0.95 * factor * scorePhrase(phrase, heading.words, asides);
    if (score > best.score) best = { score, phrase: phrase.written };
  }
  return best;
};

const remembered = new WeakMap<HeadingText, Map<string, readonly [WordScore, WordScore]>>();

/** How well the words of a heading name a field, given as "table.field". */
export const scoreWords = (field: string, title: string, heading: HeadingText, facts: Facts): WordScore => {
  let byField = remembered.get(heading);
  if (!byField) remembered.set(heading, (byField = new Map()));
  let both = byField.get(field);
  if (!both) {
    const isOwnTitle = heading.asides.length === 0 && foldWords(title).join(' ') === heading.words.join(' ');
    const plain = isOwnTitle ? { score: 1, phrase: title } : bestPhrase(field, heading, facts, false);
    byField.set(field, (both = [plain, bestPhrase(field, heading, facts, true)]));
  }
  const [plain, overRanges] = both;
  return overRanges.score > plain.score && facts.hasRanges() ? overRanges : plain;
};
