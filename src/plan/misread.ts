import type { Problem } from '../core/issue';
import { markedIn, type InLanguages, type Language } from '../core/language';
import type { TableName } from './fields';
import { expectedWords, LIST_NAMES } from './words/expected';

/** Where in a plan something could not be read. */
export type Place =
  | { readonly kind: 'path'; readonly path: string }
  | {
      readonly kind: 'cell';
      readonly table: TableName;
      /** Where the table is spread over several. */
      readonly sheet?: string;
      readonly row?: number;
      readonly heading: string;
      readonly key?: string;
    };

/** What was read, and what was expected instead. The value counts as not known. */
export interface Misread {
  readonly place: Place;
  readonly read: string;
  readonly expected: string;
  readonly problem?: Problem;
}

interface MisreadWords {
  readonly nothing: string;
  readonly read: string;
  readonly expected: string;
  readonly ambiguous: (a: string, b: string) => string;
  readonly otherQuantity: string;
  readonly row: string;
}
const WORDS: InLanguages<MisreadWords> = {
  en: {
    nothing: 'nothing',
    read: 'read',
    expected: 'expected',
    ambiguous: (a, b) => `, which can mean ${a} or ${b}`,
    otherQuantity: ', which is another quantity',
    row: 'row',
  },
  de: {
    nothing: 'nichts',
    read: 'gelesen',
    expected: 'erwartet',
    ambiguous: (a, b) => `, das kann ${a} oder ${b} heißen`,
    otherQuantity: ', das ist eine andere Größe',
    row: 'Zeile',
  },
  fr: {
    nothing: 'rien',
    read: 'lu',
    expected: 'attendu',
    ambiguous: (a, b) => `, qui peut vouloir dire ${a} ou ${b}`,
    otherQuantity: ', qui est une autre grandeur',
    row: 'ligne',
  },
};

export const describeMisread = ({ place, read, expected, problem }: Misread, language: Language = 'en'): string => {
  const words = WORDS[language];
  const said = read === '' ? words.nothing : `"${read}"`;
  return `${describePlace(place, words, language)}: ${words.read} ${said}${aside(problem, words, language)}, ${words.expected} ${expectedWords(expected, language)}.`;
};

const aside = (problem: Problem | undefined, words: MisreadWords, language: Language): string => {
  if (problem?.code === 'ambiguous')
    return words.ambiguous(markedIn(problem.readings[0], language), markedIn(problem.readings[1], language));
  return problem?.code === 'wrong-unit' ? words.otherQuantity : '';
};

const describePlace = (place: Place, words: MisreadWords, language: Language): string => {
  if (place.kind === 'path') return place.path;
  const row = place.row === undefined ? '' : `, ${words.row} ${place.row}`;
  const sheet = place.sheet === undefined ? '' : ` (${place.sheet})`;
  return `${LIST_NAMES[language][place.table]}${sheet}${row}, ${place.heading}`;
};
