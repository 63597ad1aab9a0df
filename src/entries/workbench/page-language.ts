import { languageOf, type Language } from '../../core/language';

/** The language of the page: as its address asks ("?lang=de"), or else as the browser is set. */
export const pageLanguage = (search: string, preferred: string | undefined): Language =>
  languageOf(new URLSearchParams(search).get('lang') ?? preferred);
