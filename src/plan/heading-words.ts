import { isFiller, VOCABULARY } from './heading-phrases';

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
  const [shorter, longer] = [Math.min(plain.length, word.length), Math.max(plain.length, word.length)];
  // A word of four letters is another one when a letter is exchanged, and the same when one is missing from five.
  const limit = shorter >= 8 ? 2 : shorter >= 5 || (shorter === 4 && longer === 5) ? 1 : 0;
  if (limit === 0) return 0;
  const distance = editDistance(plain, word, limit);
  return distance > limit ? 0 : 1 - distance / (shorter + 1);
};

const matches = new Map<string, ReadonlyMap<string, number>>();
/** The words of the lists that a written word may be. A known word is never taken for a misspelling of another one. */
export const matchesOf = (given: string): ReadonlyMap<string, number> => {
  let found = matches.get(given);
  if (found) return found;
  const plain = given.replace(/\.+$/, '');
  if (VOCABULARY.has(plain)) found = new Map([[plain, 1]]);
  else if (isFiller(plain) || plain.length > 40) found = new Map();
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
