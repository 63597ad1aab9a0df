import { LANGUAGES, languageOf, type Language } from '../../core/language';
import { PAPERS, type Paper } from '../../workbook/report/html';
import { usageProblem } from './status';

/** "de" or "de-AT"; a language that is not spoken is refused rather than answered in another. */
export const languageTyped = (typed: string | undefined): Language => {
  if (typed === undefined) return 'en';
  const language = languageOf(typed);
  if (language !== 'en' || /^en\b/i.test(typed)) return language;
  throw usageProblem(`language "${typed}" is not spoken; expected ${LANGUAGES.join(', ')}.`);
};

export const paperTyped = (typed: string | undefined): Paper => {
  if (typed === undefined) return 'A4';
  const paper = PAPERS.find((known) => known.toLowerCase() === typed.toLowerCase());
  if (paper) return paper;
  throw usageProblem(`paper "${typed}" is not known; expected ${PAPERS.join(', ')}.`);
};
