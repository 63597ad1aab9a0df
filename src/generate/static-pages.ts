import { LANGUAGES } from '../core/language';
import { FUNCTIONS, NAMESPACE } from '../functions/index';
import { helpPage } from './help-page';
import { installPage } from './install-page';
import { fileOf } from './static-page';

/** Pages that the build puts beside the others, by file name. */
export const staticPages = (): Readonly<Record<string, string>> =>
  Object.fromEntries(
    LANGUAGES.flatMap((language) => [
      [fileOf('help', language), helpPage(FUNCTIONS, NAMESPACE, language)],
      [fileOf('install', language), installPage(language)],
    ]),
  );
