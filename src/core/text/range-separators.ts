import { isDigit, isSpace } from './characters';

export interface Separator {
  from: number;
  to: number;
  /** "10 -20": a space before the dash and none after reads as a sign just as well. */
  looksLikeSign?: true;
}

/** A text with more candidates than this is a remark, not a range. */
const MOST = 6;
const WORDS = [' to ', ' through ', ' thru ', ' bis ', ' à ', ' until '];

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
