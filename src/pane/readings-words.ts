import type { InLanguages } from '../core/language';

/** Title of the list of all that is taken otherwise than it stands on the sheets. */
export const READINGS_TITLE: InLanguages<string> = {
  en: 'Read with an assumption',
  de: 'Mit einer Annahme gelesen',
  fr: 'Lu avec une hypothèse',
};
