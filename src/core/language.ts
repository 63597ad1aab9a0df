/** Languages of texts for people. Names of functions, fields' ids and verdict words are never translated. */
export const LANGUAGES = ['en', 'de', 'fr'] as const;
export type Language = (typeof LANGUAGES)[number];

/** The same content in every language, so that a missing translation does not compile. */
export type InLanguages<Content> = Readonly<Record<Language, Content>>;

/** "de-AT" → de; what is not spoken here becomes English. */
export const languageOf = (tag: string | undefined): Language => {
  const primary = tag?.toLowerCase().split('-')[0];
  return LANGUAGES.find((language) => language === primary) ?? 'en';
};

/** A whole number with the language's own grouping. */
export const countIn = (count: number, language: Language): string => new Intl.NumberFormat(language).format(count);

/** A text as the beginning of a sentence. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const DECIMAL: InLanguages<string> = { en: '.', de: ',', fr: ',' };
/** A number that was written with a point, with the language's decimal mark. */
export const markedIn = (text: string, language: Language): string =>
  language === 'en' ? text : text.replace('.', DECIMAL[language]);

/** The same sentence said in every language, for whoever does not know which one will be asked for. */
export const inEach = <Words, Said>(words: InLanguages<Words>, say: (words: Words) => Said): InLanguages<Said> => ({
  en: say(words.en),
  de: say(words.de),
  fr: say(words.fr),
});
