import type { Language } from '../../core/language';
import { ENGLISH, wordingOf, type Wording } from './wording';

/** Imported only when asked for, so that a page never carries a language that its reader does not read. */
const LOADERS: Readonly<Record<Language, () => Promise<Wording>>> = {
  en: () => Promise.resolve(ENGLISH),
  de: async () => wordingOf('de', (await import(/* webpackChunkName: "words-de" */ './german/all')).GERMAN),
  fr: async () => wordingOf('fr', (await import(/* webpackChunkName: "words-fr" */ './french/all')).FRENCH),
};

export const loadWording = (language: Language): Promise<Wording> => LOADERS[language]();
