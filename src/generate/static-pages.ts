import { LANGUAGES } from '../core/language';
import { FUNCTIONS, NAMESPACE } from '../functions/index';
import { loadWording } from '../functions/words/load';
import { helpPage } from './help-page';
import { installPage } from './install-page';
import { fileOf } from './static-page';

/** Pages that the build puts beside the others, by file name. */
export const staticPages = async (): Promise<Readonly<Record<string, string>>> => {
  const pages: Record<string, string> = {};
  for (const language of LANGUAGES) {
    pages[fileOf('help', language)] = helpPage(FUNCTIONS, NAMESPACE, await loadWording(language));
    pages[fileOf('install', language)] = installPage(language);
  }
  return pages;
};
