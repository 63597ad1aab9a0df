import type { InLanguages, Language } from '../../core/language';
import type { TableName } from '../fields';

/** Lists by their names, as sentences about cells name them. */
export const LIST_NAMES: InLanguages<Readonly<Record<TableName, string>>> = {
  en: { channels: 'channels', sensors: 'sensors', mounts: 'mounts', cables: 'cables', inputs: 'inputs', limits: 'limits' }, // prettier-ignore
  de: { channels: 'Kanäle', sensors: 'Aufnehmer', mounts: 'Ankopplungen', cables: 'Kabel', inputs: 'Eingänge', limits: 'Grenzen' }, // prettier-ignore
  fr: { channels: 'voies', sensors: 'capteurs', mounts: 'fixations', cables: 'câbles', inputs: 'entrées', limits: 'limites' }, // prettier-ignore
};

type Phrase = readonly [english: RegExp, german: string, french: string];

/** Pieces of what is expected of a cell; longer ones first. Words and units of the plan stay as they are. */
const PHRASES: readonly Phrase[] = [
  [/\ba serial number from sensors\b/, 'eine Seriennummer der Aufnehmerliste', 'un numéro de série de la liste des capteurs'], // prettier-ignore
  [/^a serial number that no row above has \(row (\d+), (.*)\)/, 'eine Seriennummer, die keine Zeile darüber hat (Zeile $1, $2)', 'un numéro de série qu’aucune ligne au-dessus n’a (ligne $1, $2)'], // prettier-ignore
  [/^a name that no row above has; the first row is used/, 'ein Name, den keine Zeile darüber hat; die erste Zeile wird verwendet', 'un nom qu’aucune ligne au-dessus n’a ; la première ligne est utilisée'], // prettier-ignore
  [/\ba name from sensors\b/, 'ein Name der Aufnehmerliste', 'un nom de la liste des capteurs'],
  [/\ba name from mounts\b/, 'ein Name der Liste der Ankopplungen', 'un nom de la liste des fixations'],
  [/\ba name from cables\b/, 'ein Name der Kabelliste', 'un nom de la liste des câbles'],
  [/\ba name from inputs\b/, 'ein Name der Liste der Eingänge', 'un nom de la liste des entrées'],
  [/\(did you mean "(.*)"\?\)/, '(gemeint vielleicht „$1“?)', '(peut-être « $1 » ?)'],
  [/\ba number in /, 'eine Zahl in ', 'un nombre en '],
  [/\bone number beside /, 'eine einzelne Zahl neben ', 'un seul nombre à côté de '],
  [/\ba number\b/, 'eine Zahl', 'un nombre'],
  [/, several separated by semicolons, or "none"/, ', mehrere durch Semikolons getrennt, oder „none“', ', plusieurs séparés par des points-virgules, ou « none »'], // prettier-ignore
  [/^pairs (.*), separated by semicolons/, 'Paare $1, durch Semikolons getrennt', 'des couples $1, séparés par des points-virgules'], // prettier-ignore
  [/, written out in each row/, ', in jeder Zeile ausgeschrieben', ', écrit dans chaque ligne'],
  [/, r\.m\.s\./, ', effektiv', ', efficace'],
  [/, peak\b/, ', Spitzenwert', ', crête'],
  [/, above 0\b/, ', größer als 0', ', supérieur à 0'],
  [/, at least 0\b/, ', mindestens 0', ', au moins 0'],
  [/^one of /, 'eines von ', 'un parmi '],
  [/^a date, as in /, 'ein Datum wie ', 'une date comme '],
  [/^a date$/, 'ein Datum', 'une date'],
  [/^a text$/, 'ein Text', 'un texte'],
  [/^frequencies and densities above 0/, 'Frequenzen und Dichten größer als 0', 'des fréquences et densités supérieures à 0'], // prettier-ignore
  [/^deviations above −100 %/, 'Abweichungen über −100 %', 'des dérives au-dessus de −100 %'],
  [/ as in row (\d+), the first of this type, which is used/, ' wie in Zeile $1, der ersten dieses Typs, die verwendet wird', ' comme à la ligne $1, la première de ce type, qui est utilisée'], // prettier-ignore
  [/^a limit that no row above sets for the same rows; the first is used/, 'eine Grenze, die keine Zeile darüber für dieselben Zeilen setzt; die erste wird verwendet', 'une limite qu’aucune ligne au-dessus ne fixe pour les mêmes lignes ; la première est utilisée'], // prettier-ignore
  [
    /, as the limit’s name says, or a blank/,
    ', wie der Name der Grenze sagt, oder leer',
    ', comme le dit le nom de la limite, ou vide',
  ],
  [/^a unit of .* for /, 'eine passende Einheit für ', 'une unité convenable pour '],
];

/** What was expected in place of what a cell holds, in another language than that of the reader of cells. */
export const expectedWords = (english: string, language: Language): string =>
  language === 'en'
    ? english
    : PHRASES.reduce((text, [piece, german, french]) => text.replace(piece, language === 'de' ? german : french), english); // prettier-ignore
