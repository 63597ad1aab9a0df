import type { Statistic } from '../issue';
import type { QuantityName } from '../units';
import { BASES, type Factor, type Sense } from './unit-bases';

export type Context = readonly Sense[];

const WEIGHED = new Set<QuantityName>(['mass', 'density', 'mass per length', 'moment of inertia']);
const WARM = new Set<QuantityName>([
  'temperature',
  'temperature difference',
  'temperature coefficient',
  'temperature rate',
  'zero drift',
]);

export const contextOf = (quantity: QuantityName): Context => [
  ...(WEIGHED.has(quantity) ? (['gram', 'pound-mass'] as const) : (['gravity', 'pound-force'] as const)),
  WARM.has(quantity) ? 'warmth' : 'electric',
];

const PREFIX_WORDS: Readonly<Record<string, string>> = {
  p: 'pico',
  n: 'nano',
  u: 'micro',
  m: 'milli',
  c: 'centi',
  k: 'kilo',
  M: 'mega',
  G: 'giga',
};
export const PREFIX_BY_WORD: ReadonlyMap<string, string> = new Map(
  Object.entries(PREFIX_WORDS).map(([letter, word]) => [word, letter]),
);
export const ROOTS = ['sqrt', 'root', 'rt'];
export const DEGREES = new Set(['°', 'deg', 'degs', 'degree', 'degrees']);
export const SCALES: Readonly<Record<string, string>> = {
  c: 'degC',
  celsius: 'degC',
  f: 'degF',
  fahrenheit: 'degF',
  k: 'K',
};
/** Statistics written onto the unit itself: "grms", "Vpk". */
export const GLUED: readonly (readonly [string, Statistic])[] = [
  ['rms', 'rms'],
  ['peak', 'peak'],
  ['pk', 'peak'],
];

/** Letters that are still the same unit in the other case; S, H and M are not. */
const EITHER_CASE = new Set('vanckfg');

interface Dictionary {
  exact: ReadonlyMap<string, readonly Factor[]>;
  lower: ReadonlyMap<string, readonly string[]>;
}

const buildDictionary = (context: Context): Dictionary => {
  const exact = new Map<string, readonly Factor[]>();
  for (const { spellings, factors, prefixes = '', only } of BASES) {
    if (only !== undefined && !context.includes(only)) continue;
    for (const spelling of spellings.split(' ')) {
      if (!exact.has(spelling)) exact.set(spelling, factors);
      const [[name = '', power = 1] = []] = factors;
      for (const letter of prefixes) {
        const prefixed: readonly Factor[] = [[letter + name, power]];
        if (spelling.length <= 3 && !exact.has(letter + spelling)) exact.set(letter + spelling, prefixed);
        exact.set((PREFIX_WORDS[letter] ?? '') + spelling, prefixed);
      }
    }
  }
  const lower = new Map<string, string[]>();
  for (const word of exact.keys()) {
    const key = word.toLowerCase();
    const others = lower.get(key);
    if (others) others.push(word);
    else lower.set(key, [word]);
  }
  return { exact, lower };
};
const dictionaries = new Map<string, Dictionary>();
const dictionaryOf = (context: Context): Dictionary => {
  const key = context.join();
  let dictionary = dictionaries.get(key);
  if (!dictionary) dictionaries.set(key, (dictionary = buildDictionary(context)));
  return dictionary;
};

export type WordFound = { factors: readonly Factor[] } | { ambiguous: readonly [string, string] } | undefined;

/** The unit a word names in this field; letters in the wrong case are read when only one unit can be meant. */
export const unitWord = (word: string, context: Context): WordFound => {
  const { exact, lower } = dictionaryOf(context);
  const found = exact.get(word);
  if (found) return { factors: found };
  if (word === 'gr' && context.includes('gram')) return { ambiguous: ['gram', 'grain'] };
  if (word.length === 1 && !EITHER_CASE.has(word.toLowerCase())) return undefined;
  const [first, second] = lower.get(word.toLowerCase()) ?? [];
  if (first === undefined) return undefined;
  if (second !== undefined) return { ambiguous: [first, second] };
  if (word.startsWith('M') && first.startsWith('m') && word.length <= 3) {
    return { ambiguous: [first, `M${first.slice(1)}`] };
  }
  return { factors: exact.get(first) ?? [] };
};
