import type { InLanguages, Language } from '../../core/language';
import { aimWords, combinationWords, localised } from './candidate-words';
import type { Aim } from './candidate';
import type { Conflict } from './relax-conflicts';
import type { Knob } from './relax-knobs';
import { figure, roundedAway, shortFigure } from './relax-numbers';
import type { Relaxation } from './relax-search';

const KNOB_WORDS: InLanguages<Readonly<Record<Knob, string>>> = {
  en: {
    'lowest level': 'as lowest level',
    'highest level': 'as highest level',
    'band low': 'as lower band edge',
    'band high': 'as upper band edge',
    'temperature low': 'as lowest temperature',
    'temperature high': 'as highest temperature',
    'thermal tolerance': 'of thermal tolerance',
    'span tolerance': 'of flatness',
    'mass ratio limit': 'as limit of the mass ratio',
    'local mass': 'of local mass',
    'line spacing': 'of line spacing, the lowest level read in one line',
  },
  de: {
    'lowest level': 'als kleinster Pegel',
    'highest level': 'als größter Pegel',
    'band low': 'als untere Bandgrenze',
    'band high': 'als obere Bandgrenze',
    'temperature low': 'als tiefste Temperatur',
    'temperature high': 'als höchste Temperatur',
    'thermal tolerance': 'als zulässige Temperaturabweichung',
    'span tolerance': 'als zulässige Frequenzgangabweichung',
    'mass ratio limit': 'als Grenze des Massenverhältnisses',
    'local mass': 'örtliche Masse',
    'line spacing': 'Linienabstand, der kleinste Pegel in einer Linie gelesen',
  },
  fr: {
    'lowest level': 'comme niveau minimal',
    'highest level': 'comme niveau maximal',
    'band low': 'comme limite basse de la bande',
    'band high': 'comme limite haute de la bande',
    'temperature low': 'comme température minimale',
    'temperature high': 'comme température maximale',
    'thermal tolerance': 'd’écart thermique admis',
    'span tolerance': 'd’écart de réponse admis',
    'mass ratio limit': 'comme limite du rapport de masses',
    'local mass': 'de masse locale',
    'line spacing': 'd’écart entre raies, le niveau minimal étant lu dans une raie',
  },
};

interface Words {
  readonly joined: (names: readonly string[]) => string;
  readonly none: (aim: string, all: number) => string;
  readonly both: (aims: string, all: number, each: string) => string;
  readonly relaxed: (to: string, what: string, from: string | undefined, dB: string | undefined, fit: string) => string;
  readonly unknown: (aims: string) => string;
}

const and = (names: readonly string[], word: string): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} ${word} ${names[names.length - 1]}`;

const WORDS: InLanguages<Words> = {
  en: {
    joined: (names) => and(names, 'and'),
    none: (aim, all) => `0 of ${all} combinations in stock meet this: ${aim}.`,
    both: (aims, all, each) => `0 of ${all} combinations in stock meet ${aims} together (alone: ${each}).`,
    relaxed: (to, what, from, dB, fit) =>
      `${to} ${what}${from === undefined ? '' : ` in place of ${from}`}${dB === undefined ? '' : ` (${dB})`}: ${fit} would do.`,
    unknown: (aims) => `Cannot be judged with anything in stock, for something is not known: ${aims}.`,
  },
  de: {
    joined: (names) => and(names, 'und'),
    none: (aim, all) => `0 von ${all} Kombinationen im Bestand erfüllen dies: ${aim}.`,
    both: (aims, all, each) =>
      `0 von ${all} Kombinationen im Bestand erfüllen zugleich: ${aims} (jeweils allein: ${each}).`,
    relaxed: (to, what, from, dB, fit) =>
      `${to} ${what}${from === undefined ? '' : ` statt ${from}`}${dB === undefined ? '' : ` (${dB})`}: ${fit} würde genügen.`,
    unknown: (aims) => `Mit nichts im Bestand zu beurteilen, weil etwas nicht bekannt ist: ${aims}.`,
  },
  fr: {
    joined: (names) => and(names, 'et'),
    none: (aim, all) => `0 des ${all} combinaisons en stock répond à ceci : ${aim}.`,
    both: (aims, all, each) =>
      `0 des ${all} combinaisons en stock répond à la fois à ceci : ${aims} (séparément : ${each}).`,
    relaxed: (to, what, from, dB, fit) =>
      `${to} ${what}${from === undefined ? '' : ` au lieu de ${from}`}${dB === undefined ? '' : ` (${dB})`} : ${fit} conviendrait.`,
    unknown: (aims) => `Impossible à juger avec le stock, car une donnée manque : ${aims}.`,
  },
};

/** How many combinations meet the aims together (none), and each alone. */
export const conflictSentence = ({ aims, combinations, meeting }: Conflict, language: Language = 'en'): string => {
  const words = WORDS[language];
  const names = aims.map((aim) => aimWords(aim, language));
  return names.length === 1
    ? words.none(names[0]!, combinations)
    : words.both(words.joined(names), combinations, meeting.join(', '));
};

/** The figure that is enough, rounded to the side that still is, then what takes it. */
export const relaxationSentence = (
  { knob, from, to, size, fit, isNewKind }: Relaxation,
  language: Language = 'en',
): string =>
  WORDS[language].relaxed(
    localised(figure(knob, roundedAway(knob, from, to)), language),
    KNOB_WORDS[language][knob],
    isNewKind ? undefined : localised(shortFigure(knob, from), language),
    Number.isFinite(size) ? localised(`${size.toFixed(1)} dB`, language) : undefined,
    combinationWords(fit.combination),
  );

/** What nothing can be said of. */
export const unknownSentence = (aims: readonly Aim[], language: Language = 'en'): string => {
  const words = WORDS[language];
  return words.unknown(words.joined(aims.map((aim) => aimWords(aim, language))));
};
