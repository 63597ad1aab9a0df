import { capital, type InLanguages, type Language } from '../../core/language';
import { fieldsWords } from './envelope-field-words';
import { numberWords } from './envelope-numbers';
import { TEXTS } from './envelope-texts';
import {
  ADVICE_WORDS,
  CODE_WORDS,
  ELEMENT_WORDS,
  MARK_WORDS,
  REACH_WORDS,
  STANDING_WORDS,
  STEP_WORDS,
} from './technology-texts';
import type {
  Relaxation,
  SensingElement,
  Standing,
  Step,
  TechnologyAdvice,
  TechnologyReason,
} from './technology-types';

export const elementWords = (element: SensingElement, language: Language = 'en'): string =>
  ELEMENT_WORDS[language][element];
export const standingWords = (standing: Standing, language: Language = 'en'): string =>
  STANDING_WORDS[language][standing];
export const stepWords = (step: Step, language: Language = 'en'): string => STEP_WORDS[language][step];

/** The number asked first, then what is usual and its mark, then what would bring the kind back. */
export const technologySentence = (reason: TechnologyReason, language: Language = 'en'): string => {
  const { code, number, limit, unit, standing, mark } = reason;
  const shown = (value: number | undefined) =>
    value === undefined || unit === undefined ? '' : numberWords(value, unit, language);
  const said = CODE_WORDS[language][code](shown(number), shown(limit), REACH_WORDS[language][standing]);
  const help = relaxationWords(reason, language);
  return `${capital(said)} (${MARK_WORDS[language][mark]})${help ? `${TEXTS[language].between}${help}` : ''}.`;
};

const SIGNS = { atMost: '≤', atLeast: '≥' } as const;

/** "≥ 11.2 % thermal tolerance would bring it back"; undefined where no number would. */
const relaxationWords = ({ relaxation, standing }: TechnologyReason, language: Language = 'en') => {
  const texts = ADVICE_WORDS[language];
  if (relaxation?.number === undefined || relaxation.unit === undefined) return undefined;
  const { number, unit, direction = 'atLeast' } = relaxation;
  return texts.relaxed(
    whatWords(relaxation, language),
    `${SIGNS[direction]} ${numberWords(number, unit, language)}`,
    standing,
  );
};

const whatWords = ({ field }: Relaxation, language: Language): string => {
  const texts = ADVICE_WORDS[language];
  if (field === 'massRatio') return texts.massRatio;
  if (field === 'circumstances') return texts.ramp;
  return language === 'en' ? fieldsWords([field]).toLowerCase() : fieldsWords([field], language);
};

/** What holds for the channel as a whole: a sensor without contact, and steps that could not be asked. */
export const adviceNotes = (
  { nonContact, missing }: TechnologyAdvice,
  language: Language = 'en',
): readonly string[] => {
  const texts = ADVICE_WORDS[language];
  const gaps = missing.map(({ step, fields }) =>
    texts.notAsked(stepWords(step, language), fieldsWords(fields, language)),
  );
  if (!nonContact) return [TENDENCY[language], ...gaps];
  const { allowed, least, mark } = nonContact;
  const [now, limit] = [allowed, least].map((mass) => numberWords(mass, 'gram', language)) as [string, string];
  return [TENDENCY[language], texts.nonContact(now, limit, MARK_WORDS[language][mark]), ...gaps];
};

const TENDENCY: InLanguages<string> = {
  en: 'Tendencies of whole kinds for planning: the data of the individual sensor always decides.',
  de: 'Tendenzen ganzer Bauarten für die Planung: Die Daten des einzelnen Aufnehmers entscheiden immer.',
  fr: 'Tendances de familles entières pour préparer un essai : les données du capteur décident toujours.',
};
