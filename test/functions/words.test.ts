import { LANGUAGES, type Language } from '../../src/core/language';
import { UNITS } from '../../src/core/units';
import { DISTRIBUTIONS } from '../../src/core/trust/distribution';
import { argumentHint } from '../../src/functions/describe';
import { FUNCTIONS, functionByName } from '../../src/functions/index';
import { FRENCH } from '../../src/functions/words/french/all';
import { GERMAN } from '../../src/functions/words/german/all';
import { loadWording } from '../../src/functions/words/load';
import { textsOf } from '../../src/functions/words/texts';
import type { Translations } from '../../src/functions/words/wording';

const TRANSLATED = LANGUAGES.filter((language) => language !== 'en');
const TABLES: Readonly<Record<Exclude<Language, 'en'>, Translations>> = { de: GERMAN, fr: FRENCH };
const CATALOGUE = [...new Set(FUNCTIONS.flatMap(textsOf))];

/** Texts that read the same in both languages. */
const SAME: Readonly<Record<Exclude<Language, 'en'>, readonly string[]>> = { de: [], fr: [] };

/** Words of the other language that would show a text left half translated. */
const ENGLISH_LEFT = /\b(the|of|and|with|from|blank|at|by|which|that|is|its|for)\b/;

const plainNumbers = (text: string): string => text.replace(/(\d),(?=\d)/g, '$1.');
const numbersOf = (text: string): string[] =>
  plainNumbers(text)
    .match(/\d+(\.\d+)?/g)
    ?.sort() ?? [];
const UNIT_WORDS = new Set<string>([...Object.values(UNITS).map(({ label }) => label), 'mg', 'lb'].filter(Boolean));
/** What may not change in a translation: units, formulas, verdict and function names, and words to be typed. */
const fixedParts = (text: string): string[] => [
  ...(text.match(/["“][^"”]+["”]/g) ?? []).map((quoted) => quoted.slice(1, -1)),
  ...(text.match(/\b[A-Z]{4,}(\.[A-Z]+)*\b/g) ?? []),
  ...plainNumbers(text)
    .split(/\s+/)
    .map((word) => word.replace(/^[("“]+|[)"”.,:;]+$/g, ''))
    .filter((word) => /[²√µ°±·δζ%×−^_#=]|Δ/.test(word) || UNIT_WORDS.has(word)),
];
const holds = (text: string, part: string): boolean =>
  /^[A-Za-z]+$/.test(part) ? new RegExp(`(?<!\\p{L})${part}(?!\\p{L})`, 'u').test(text) : text.includes(part);
/** A few units are words of the language when they stand in a sentence. */
const WORD_FOR: Readonly<Record<Exclude<Language, 'en'>, Readonly<Record<string, string>>>> = {
  de: { gram: 'Gramm' },
  fr: { gram: 'grammes' },
};
const lostParts = (english: string, translated: string, language: Exclude<Language, 'en'>): string[] => {
  const plain = plainNumbers(translated);
  return fixedParts(english).filter((part) => {
    const word = WORD_FOR[language][part];
    return !holds(plain, plainNumbers(part)) && !(word && plain.includes(word));
  });
};

describe.each(TRANSLATED)('the catalogue in %s', (language) => {
  const table = TABLES[language];

  it('has a translation of every text', () => {
    expect(CATALOGUE.filter((text) => !Object.hasOwn(table, text))).toEqual([]);
  });

  it('has no translation of a text that is gone', () => {
    expect(Object.keys(table).filter((text) => !CATALOGUE.includes(text))).toEqual([]);
  });

  it('keeps numbers, units, names and words to be typed', () => {
    const changed = Object.entries(table).flatMap(([english, translated]) => {
      const lost = lostParts(english, translated, language);
      const numbers = [numbersOf(english), numbersOf(translated)].map((list) => list.join(' '));
      return lost.length > 0 || numbers[0] !== numbers[1] ? [{ english, translated, lost, numbers }] : [];
    });
    expect(changed).toEqual([]);
  });

  it('leaves nothing in English', () => {
    expect(
      Object.entries(table).filter(
        ([english, translated]) =>
          (english === translated && !SAME[language].includes(english)) || ENGLISH_LEFT.test(translated),
      ),
    ).toEqual([]);
  });

  it('ends every sentence, on one line, without stray spaces', () => {
    const faulty = Object.values(table).filter((text) => !/^\S.*[.!]$/.test(text) || /\s\s|\s[.,]/.test(text));
    expect(faulty).toEqual([]);
  });

  it('spells the distributions as the cells must spell them', async () => {
    const { say } = await loadWording(language);
    const { contributions } = functionByName('UNCERTAINTY.COMBINED')!.args;
    for (const name of DISTRIBUTIONS) expect(say(contributions.text)).toContain(name);
  });
});

describe('the check of translations', () => {
  it.each([
    ['a number', 'Loss of 3.5 dB.', 'Abfall um 5,3 dB.'],
    ['a number that was added', 'Loss at 5 Hz.', 'Abfall bei 5 Hz und 7 Hz.'],
    ['a unit', 'Growth per 1000 m/s².', 'Zuwachs je 1000 m/s.'],
    ['a unit of one letter', 'What g means.', 'Was mg bedeutet.'],
    ['a verdict', 'PASS or FAIL.', 'PASS oder FEHLER.'],
    ['a word to be typed', 'Poles; "none" for none.', 'Pole; "keine" für keine.'],
    ['a function', 'As by THERMAL.RAMP.', 'Wie aus TEMPERATUR.RAMPE.'],
  ])('notices a change of %s', (_what, english, translated) => {
    const isKept =
      lostParts(english, translated, 'de').length === 0 && numbersOf(english).join() === numbersOf(translated).join();
    expect(isKept).toBe(false);
  });

  it('accepts a decimal comma', () => {
    expect(lostParts('10^0.3 or 2.56 Hz.', '10^0,3 oder 2,56 Hz.', 'de')).toEqual([]);
    expect(numbersOf('2.56 Hz')).toEqual(numbersOf('2,56 Hz'));
  });
});

describe('an argument hint', () => {
  it.each<[Language, string]>([
    ['en', 'Loss there. (%; > 0, ≤ 2.5; blank: 0.5)'],
    ['de', 'Abfall dort. (%; > 0, ≤ 2,5; leer: 0,5)'],
    ['fr', 'Perte à cet endroit. (% ; > 0, ≤ 2,5 ; vide : 0,5)'],
  ])('says unit, limits and blank as they are read and typed in %s', (language, expected) => {
    const texts: Record<Language, string> = { en: 'Loss there.', de: 'Abfall dort.', fr: 'Perte à cet endroit.' };
    const spec = { unit: '%', above: 0, atMost: 2.5, default: 0.5, text: 'Loss there.' } as const;
    expect(argumentHint(spec, { language, say: () => texts[language] })).toBe(expected);
  });

  it('says of an argument that may stay blank, of a list and of a curve, what they are', () => {
    const german = { language: 'de', say: (text: string) => text } as const;
    expect(argumentHint({ kind: 'list', unit: 'g', text: 'X.' }, german)).toBe('X. (eine oder mehrere Zahlen in g)');
    expect(argumentHint({ kind: 'curve', x: 'Hz', y: '%', optional: true, text: 'X.' }, german)).toBe(
      'X. (Paare Hz:% in einer Zelle, oder zwei Spalten; darf leer sein)',
    );
    expect(argumentHint({ unit: 'g', forgiving: true, text: 'X.' }, german)).toBe('X. (g; leer: unvollständig)');
  });
});

it('speaks English without loading a table, and leaves an unknown text as it is', async () => {
  const [english, german] = [await loadWording('en'), await loadWording('de')];
  expect(english.say('Sample rate.')).toBe('Sample rate.');
  expect(german.say('Sample rate.')).toBe('Abtastrate.');
  expect(german.say('toString')).toBe('toString');
});
