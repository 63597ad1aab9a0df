import { markedIn, type InLanguages, type Language } from '../../../core/language';
import * as plain from '../../numbers-in-words';

/** A gram is spelled out, for "g" is an acceleration. */
export const GRAM: InLanguages<string> = { en: 'gram', de: 'Gramm', fr: 'grammes' };

/** The ways of writing numbers, with the decimal mark of a language. */
export const numbersIn = (language: Language) => {
  const marked = (text: string): string => markedIn(text, language);
  const both = ([number, limit]: readonly [string, string]): readonly [string, string] => [
    marked(number),
    marked(limit),
  ];
  return {
    inWords: (...given: Parameters<typeof plain.inWords>) => marked(plain.inWords(...given)),
    withUnit: (...given: Parameters<typeof plain.withUnit>) => marked(plain.withUnit(...given)).replace(/ gram$/, ` ${GRAM[language]}`), // prettier-ignore
    signed: (...given: Parameters<typeof plain.signed>) => marked(plain.signed(...given)),
    acceleration: (si: number) => marked(plain.acceleration(si)),
    decibelsAgainst: (number: number, limit: number) => both(plain.decibelsAgainst(number, limit)),
    ratioAgainst: (number: number, limit: number) => both(plain.ratioAgainst(number, limit)),
    quantityAgainst: (...given: Parameters<typeof plain.quantityAgainst>) => both(plain.quantityAgainst(...given)),
  };
};
