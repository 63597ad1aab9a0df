import type { QuantityName } from '../units';

/** What a letter such as g, C or lb means depends on the field it stands in, never on the text. */
export type Sense = 'gravity' | 'gram' | 'electric' | 'warmth' | 'pound-mass' | 'pound-force';
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

export type Factor = readonly [name: string, power: number];
interface Base {
  spellings: string;
  factors: readonly Factor[];
  /** SI prefixes people write before the spellings. */
  prefixes?: string;
  only?: Sense;
}
const base = (spellings: string, name: string, prefixes = '', only?: Sense): Base => ({
  spellings,
  factors: [[name, 1]],
  prefixes,
  only,
});

const BASES: readonly Base[] = [
  base('m metre metres meter meters', 'm', 'numck'),
  base('micron microns', 'um'),
  base('in inch inches "', 'in'),
  base('ft foot feet', 'ft'),
  base('mil mils thou', 'mil'),
  base('s sec secs second seconds', 's', 'num'),
  base('min mins minute minutes', 'minute'),
  base('h hr hrs hour hours', 'hour'),
  base('Hz hertz', 'Hz', 'mkMG'),
  base('cps', 'Hz'),
  base('rpm', 'rpm'),
  base('V volt volts', 'V', 'numk'),
  base('A amp amps ampere amperes', 'A', 'pnum'),
  base('N newton newtons', 'N', 'umkM'),
  base('Pa pascal pascals', 'Pa', 'mhkMG'),
  base('psi', 'psiexact', 'kM'),
  base('ksi', 'kpsiexact'),
  base('bar', 'bar', 'm'),
  base('lbf', 'lbfexact'),
  base('kip klbf', 'klbfexact'),
  base('ozf', 'ozfexact'),
  base('kgf kp', 'kgf'),
  base('K kelvin kelvins', 'K', 'm'),
  base('kg kgs kilogram kilograms kilogramme', 'kg'),
  base('gram grams gramme grammes', 'g', 'num'),
  base('lbm', 'lbm'),
  base('grain grains', 'grain'),
  base('tonne tonnes', 'tonne'),
  base('dB decibel decibels', 'decibel'),
  base('% percent pct', 'percent'),
  base('‰', 'permille'),
  base('ppm', 'ppm'),
  base('rad rads radian radians', 'rad', 'mu'),
  base('deg degs degree degrees °', 'deg'),
  base('W watt watts', 'W', 'num'),
  base('ε strain', 'strain', 'um'),
  base('ue', 'ustrain'),
  base('coulomb coulombs', 'C', 'pnu'),
  base('farad farads', 'F', 'pnu'),
  { spellings: 'cc ccm', factors: [['cm', 3]] },
  { spellings: 'Ns', factors: [['N', 1], ['s', 1]] }, // prettier-ignore
  { spellings: 'Nm', factors: [['N', 1], ['m', 1]] }, // prettier-ignore
  base('g gs gn g_n g0 g_0', 'gn', 'num', 'gravity'),
  base('G Gs', 'gn', 'numk', 'gravity'),
  base('g gm gms gs', 'g', 'num', 'gram'),
  base('lb lbs pound pounds', 'lbm', '', 'pound-mass'),
  base('oz ounce ounces', 'oz', '', 'pound-mass'),
  base('lb lbs pound pounds', 'lbfexact', '', 'pound-force'),
  base('oz ounce ounces', 'ozfexact', '', 'pound-force'),
  base('C', 'C', 'pnuf', 'electric'),
  base('F', 'F', 'pnuf', 'electric'),
  base('pC nC uC', 'C', '', 'warmth'),
  base('C degC celsius centigrade', 'stepC', '', 'warmth'),
  base('F degF fahrenheit', 'stepF', '', 'warmth'),
  base('degC celsius centigrade', 'stepC', '', 'electric'),
  base('degF fahrenheit', 'stepF', '', 'electric'),
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
