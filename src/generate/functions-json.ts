import { LANGUAGES, type Language } from '../core/language';
import { FUNCTIONS } from '../functions/index';
import { loadWording } from '../functions/words/load';
import { customFunctionsMetadata } from './metadata';

/** The name under which the manifest asks for the metadata in a language. */
export const functionsJsonName = (language: Language): string =>
  language === 'en' ? 'functions.json' : `functions.${language}.json`;

/** What the build puts beside the page, by name: the metadata that Excel reads before it loads the functions. */
export const functionsJson = async (): Promise<Readonly<Record<string, string>>> =>
  Object.fromEntries(
    await Promise.all(
      LANGUAGES.map(async (language) => [
        functionsJsonName(language),
        `${JSON.stringify(customFunctionsMetadata(FUNCTIONS, await loadWording(language)), null, 2)}\n`,
      ]),
    ),
  );
