import type { InLanguages, Language } from '../../../core/language';
import type { Verdict } from '../../../core/verdict';
import { DEFAULT_ORIGIN, ROW_ORIGIN } from '../../limits';

/** Phrases of ours inside an origin; what a plan's own limits table says stays as it is. */
const PHRASES: InLanguages<readonly (readonly [ours: string, said: string])[]> = {
  en: [[DEFAULT_ORIGIN, 'default']],
  de: [
    [DEFAULT_ORIGIN, 'Vorgabe'],
    [ROW_ORIGIN, 'diese Zeile'],
    ['this plan', 'dieser Plan'],
    ['; no purpose given, ', '; kein Zweck genannt, '],
    ['a third of what ', 'ein Drittel dessen, was '],
    [' holds; common practice, no source', ' hält; übliche Praxis, ohne Quelle'],
    ['the mount', 'die Ankopplung'],
  ],
  fr: [
    [DEFAULT_ORIGIN, 'par défaut'],
    [ROW_ORIGIN, 'cette ligne'],
    ['this plan', 'ce plan'],
    ['; no purpose given, ', ' ; aucun but indiqué, '],
    ['a third of what ', 'le tiers de ce que '],
    [' holds; common practice, no source', ' tient ; pratique courante, sans source'],
    ['the mount', 'la fixation'],
  ],
};

export const originIn = (origin: string, language: Language): string =>
  PHRASES[language].reduce((text, [ours, said]) => text.replace(ours, said), origin);

/** Where a limit comes from, in brackets. */
export const from = (origin: string | undefined, language: Language = 'en'): string =>
  origin === undefined ? '' : ` (${originIn(origin, language)})`;

/** Only what is not a PASS is explained. */
export const because = (
  { verdict }: { readonly verdict: Verdict },
  ...parts: readonly (string | undefined)[]
): string => explained(verdict, parts, ': ', '; ');

/** French sets a space before colon and semicolon. */
export const becauseInFrench = (
  { verdict }: { readonly verdict: Verdict },
  ...parts: readonly (string | undefined)[]
): string => explained(verdict, parts, ' : ', ' ; ');

const explained = (
  verdict: Verdict,
  parts: readonly (string | undefined)[],
  colon: string,
  semicolon: string,
): string => {
  const said = verdict === 'PASS' ? [] : parts.filter((part) => part !== undefined);
  return said.length === 0 ? '.' : `${colon}${said.join(semicolon)}.`;
};
