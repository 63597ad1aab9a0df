import type { InLanguages } from '../core/language';
import type { Family } from '../functions/define';
import { GERMAN } from './help-words-de';
import { ENGLISH } from './help-words-en';
import { FRENCH } from './help-words-fr';

export interface HelpWords {
  readonly title: string;
  readonly lead: readonly string[];
  readonly start: { readonly heading: string; readonly steps: readonly string[] };
  readonly verdicts: {
    readonly heading: string;
    readonly columns: readonly string[];
    readonly rows: readonly (readonly string[])[];
    readonly after: readonly string[];
  };
  readonly errors: { readonly heading: string; readonly points: readonly string[] };
  readonly units: { readonly heading: string; readonly text: readonly string[]; readonly columns: readonly string[] };
  readonly numbers: { readonly heading: string; readonly points: readonly string[] };
  readonly cautions: { readonly heading: string; readonly text: readonly string[] };
  readonly privacy: { readonly heading: string; readonly text: readonly string[] };
  /** A line with a link to the page on installing. */
  readonly install: string;
  readonly functions: {
    readonly heading: string;
    readonly text: readonly string[];
    readonly index: string;
    readonly arguments: string;
    readonly result: string;
    readonly valid: string;
    readonly source: string;
    readonly examples: string;
    readonly ifBlank: string;
    readonly needed: string;
    readonly families: Readonly<Record<Family, string>>;
  };
}

export const HELP_WORDS: InLanguages<HelpWords> = { en: ENGLISH, de: GERMAN, fr: FRENCH };
