import type { Language } from '../../core/language';

/** What people read about a function in another language, by the English text of its declaration. */
export type Translations = Readonly<Record<string, string>>;

/** One language, ready to be spoken. */
export interface Wording {
  readonly language: Language;
  /** A text of the catalogue in this language; one that is not translated stays English. */
  readonly say: (english: string) => string;
}

export const ENGLISH: Wording = { language: 'en', say: (english) => english };

export const wordingOf = (language: Language, translations: Translations): Wording => ({
  language,
  say: (english) => (Object.hasOwn(translations, english) ? translations[english]! : english),
});
