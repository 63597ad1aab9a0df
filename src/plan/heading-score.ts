import { isFiller, isTogether, phrasesOf, VOCABULARY, type Phrase } from './heading-phrases';
import { foldWords, type HeadingText } from './heading-text';
import { matchesOf } from './heading-words';

const weightOf = (word: string): number => {
  const plain = word.replace(/\.+$/, '');
  return isFiller(plain) ? 0.04 : /^[0-9.]+$/.test(plain) ? 0.15 : 1;
};
/** Short unknown words in brackets may be a unit that we cannot read: then a quantity is a question. */
const asideWeight = (word: string, isQuantity: boolean): number =>
  isFiller(word) ? 0.04 : isQuantity && word.length <= 4 && !VOCABULARY.has(word) ? 0.7 : 0.2;

/** Prepositions tell a bound only where a heading begins or ends with them: "from Hz", "Bande à", never "fréquence à analyser". */
const AT_AN_END = new Set(['a', 'ab', 'al', 'bis', 'da', 'de', 'desde', 'from', 'hasta', 'to', 'von']);

/** How alike a word is to the most similar one of a slot. */
const alike = (word: string, slot: ReadonlySet<string>): number => {
  let best = 0;
  for (const [option, value] of matchesOf(word)) if (value > best && slot.has(option)) best = value;
  return best;
};

/** The words of a heading that are looked at; a bit each tells which are used. */
const MOST_WORDS = 30;

/** The best way to find each slot from the n-th on in a word of its own: how alike they are in sum, and which are used. */
const fill = (
  slots: Phrase['slots'],
  n: number,
  words: readonly string[],
  used: number,
): { readonly similar: number; readonly used: number } | undefined => {
  const slot = slots[n];
  if (!slot) return { similar: 0, used };
  let best: { similar: number; used: number } | undefined;
  for (let index = 0; index < words.length; index++) {
    const word = words[index]!;
    if (used & (1 << index) || (AT_AN_END.has(word) && index > 0 && index < words.length - 1)) continue;
    const similar = alike(word, slot);
    const rest = similar === 0 ? undefined : fill(slots, n + 1, words, used | (1 << index));
    if (rest && similar + rest.similar > (best?.similar ?? 0))
      best = { similar: similar + rest.similar, used: rest.used };
  }
  return best;
};

const leftOver = (words: readonly string[], used: number): number => {
  let sum = 0;
  for (let index = 0; index < words.length; index++) if (!(used & (1 << index))) sum += weightOf(words[index]!);
  return sum;
};

const scorePhrase = (
  { slots }: Phrase,
  words: readonly string[],
  bare: readonly string[],
  joined: string,
  asides: number,
): number => {
  if (joined.length > 1 && isTogether(slots, joined)) return slots.length / (slots.length + asides) - 0.01;
  const glued = slots.length === 2 ? bare.findIndex((word) => word.length > 2 && isTogether(slots, word)) : -1;
  if (glued >= 0) return (slots.length - 0.03) / (slots.length + leftOver(words, 1 << glued) + asides);
  const filled = slots.length <= words.length ? fill(slots, 0, words, 0) : undefined;
  return filled ? filled.similar / (slots.length + leftOver(words, filled.used) + asides) : 0;
};

export interface WordScore {
  /** 0..1 */
  readonly score: number;
  readonly phrase: string;
}

const WEAK = 0.78;
const BY_UNIT = 0.9;
const ASKED = 0.6;

interface Facts {
  readonly isQuantity: boolean;
  readonly unitFits: boolean;
  /** Asked only when the words leave it open. */
  readonly hasRanges: () => boolean;
}
const NO_WORDS: WordScore = { score: 0, phrase: '' };

const bestPhrase = (field: string, heading: HeadingText, facts: Facts, overRanges: boolean): WordScore => {
  const asides = heading.asides.reduce((sum, word) => sum + asideWeight(word, facts.isQuantity), 0);
  const words = heading.words.slice(0, MOST_WORDS);
  const bare = words.map((word) => word.replace(/\.+$/, ''));
  const joined = bare.join('');
  let best = NO_WORDS;
  for (const phrase of phrasesOf(field)) {
    if (phrase.wantsRange !== overRanges || (phrase.wantsUnit && !facts.unitFits)) continue;
    const factor = phrase.isAsked ? ASKED : phrase.weak ? WEAK : phrase.wantsUnit ? BY_UNIT : 1;
    const score = 0.95 * factor * scorePhrase(phrase, words, bare, joined, asides);
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
