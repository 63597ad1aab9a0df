import { LocaleType, type ILanguagePack } from '@univerjs/core';
import type { InLanguages, Language } from '../../../core/language';
import { TEXTS as ENGLISH } from './english';

export interface GridTexts {
  readonly locale: LocaleType;
  readonly texts: ILanguagePack;
}
export const ENGLISH_GRID: GridTexts = { locale: LocaleType.EN_US, texts: ENGLISH };

/** Imported only when asked for; English comes with the grid. */
const LOADERS: InLanguages<() => Promise<GridTexts>> = {
  en: () => Promise.resolve(ENGLISH_GRID),
  de: async () => ({
    locale: LocaleType.DE_DE,
    texts: (await import(/* webpackChunkName: "grid-de" */ './german')).TEXTS,
  }),
  fr: async () => ({
    locale: LocaleType.FR_FR,
    texts: (await import(/* webpackChunkName: "grid-fr" */ './french')).TEXTS,
  }),
};

/** English words are better than no spreadsheet. */
export const loadGridTexts = (language: Language): Promise<GridTexts> => LOADERS[language]().catch(() => ENGLISH_GRID);
