import { isDigit, isSpace } from './characters';

export interface Separator {
  from: number;
  to: number;
  /** "10 -20": a space before the dash and none after reads as a sign just as well. */
  looksLikeSign?: true;
}

/** A text with more candidates than this is a remark, not a range. */
const MOST = 6;
const WORDS = [
  ...[' to ', ' through ', ' thru ', ' up to ', ' until '],
  ...[' bis ', ' à ', ' a ', ' ad ', ' al ', ' hasta ', ' fino a ', " jusqu'à "],
];
/** Words that stand before a range, with those that stand between its ends in their place. */
const BEFORE: readonly (readonly [string, string?])[] = [
  ...(['from ', 'von ', 'de ', 'da ', 'dal ', 'del ', 'desde '] as const).map((word) => [word] as const),
  ...([
    ['between ', ' and '],
    ['zwischen ', ' und '],
    ['entre ', ' et '],
    ['entre ', ' y '],
    ['tra ', ' e '],
  ] as const),
];

/** "from 2 to 500 Hz" and "zwischen 2 und 500 Hz" as "2 to 500 Hz". */
export const withoutLeadingWord = (text: string): string => {
  const low = text.toLowerCase();
  for (const [before, between] of BEFORE) {
    if (!low.startsWith(before)) continue;
    const at = between === undefined ? -1 : low.indexOf(between);
    if (between === undefined) return text.slice(before.length);
    if (at > 0) return `${text.slice(before.length, at)} to ${text.slice(at + between.length)}`;
  }
  return text;
};

const strongSeparators = (text: string): Separator[] => {
  const found: Separator[] = [];
  const low = text.toLowerCase();
  for (let i = 1; i < text.length && found.length <= MOST; i++) {
    if (text[i] === '~') found.push({ from: i, to: i + 1 });
    else if (text.startsWith('..', i)) {
      let to = i + 2;
      while (text[to] === '.') to++;
      found.push({ from: i, to });
      i = to;
    } else if (text[i] === '/' && (text[i + 1] === '+' || text[i + 1] === '-')) found.push({ from: i, to: i + 1 });
    else {
      const word = isSpace(text[i]) && WORDS.find((w) => low.startsWith(w, i));
      if (word) found.push({ from: i, to: i + word.length });
    }
  }
  return found;
};

/** Places at which a plain text may fall into a lower and an upper end. A dash counts only when nothing plainer is there. */
export const separatorsOf = (text: string): Separator[] => {
  const strong = strongSeparators(text);
  if (strong.length > 0) return strong.length === 1 ? strong : [];
  const found: Separator[] = [];
  for (let i = 1; i < text.length; i++) {
    if (text[i] !== '-') continue;
    if (found.length === MOST) return [];
    const looksLikeSign = isSpace(text[i - 1]) && isDigit(text[i + 1]);
    found.push(looksLikeSign ? { from: i, to: i + 1, looksLikeSign } : { from: i, to: i + 1 });
  }
  return found;
};
