import type { InLanguages } from '../core/language';
import type { FurtherList } from './tables';

export interface ListWords {
  /** A list that looks like one and is not part of the plan, and why. */
  readonly notRead: (sheet: string, row: number, because: FurtherList['because']) => string;
  readonly partOf: (sheet: string) => string;
  readonly because: Readonly<Record<NonNullable<FurtherList['because']>, string>>;
  /** "Wing, Boom and Tail" in quotes of the language. */
  readonly sheets: (names: readonly string[]) => string;
  readonly channels: (count: number) => string;
}

const listed = (names: readonly string[], and: string): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} ${and} ${names.at(-1)}`;

const english = {
  'other columns': 'its columns are not the same',
  'same channels': 'it has channels of the same names',
  'same sheet': 'it stands on a sheet with another list',
  'left out': 'left out, as you said',
};
const german = {
  'other columns': 'ihre Spalten sind andere',
  'same channels': 'sie hat Kanäle mit gleichen Namen',
  'same sheet': 'sie steht mit einer anderen Liste auf einem Blatt',
  'left out': 'ausgelassen, wie angegeben',
};
const french = {
  'other columns': 'ses colonnes diffèrent',
  'same channels': 'elle a des voies de mêmes noms',
  'same sheet': 'elle est sur la même feuille qu’une autre liste',
  'left out': 'laissée de côté, comme indiqué',
};

export const LIST_WORDS: InLanguages<ListWords> = {
  en: {
    notRead: (sheet, row, because) =>
      `The list on sheet "${sheet}" (header in row ${row}) looks like a channel list too and is not part of this plan${because ? `: ${english[because]}` : ''}.`,
    partOf: (sheet) => `No column names the structure part: the sheet’s name "${sheet}" is taken for it.`,
    because: english,
    sheets: (names) =>
      listed(
        names.map((name) => `“${name}”`),
        'and',
      ),
    channels: (count) => `${count} ${count === 1 ? 'channel' : 'channels'}`,
  },
  de: {
    notRead: (sheet, row, because) =>
      `Die Liste auf dem Blatt „${sheet}“ (Kopf in Zeile ${row}) sieht auch wie eine Kanalliste aus und gehört nicht zu diesem Plan${because ? `: ${german[because]}` : ''}.`,
    partOf: (sheet) => `Keine Spalte nennt den Strukturteil: dafür gilt der Name des Blatts „${sheet}“.`,
    because: german,
    sheets: (names) =>
      listed(
        names.map((name) => `„${name}“`),
        'und',
      ),
    channels: (count) => `${count} ${count === 1 ? 'Kanal' : 'Kanäle'}`,
  },
  fr: {
    notRead: (sheet, row, because) =>
      `La liste de la feuille « ${sheet} » (en-tête à la ligne ${row}) ressemble aussi à une liste de voies et ne fait pas partie de ce plan${because ? ` : ${french[because]}` : ''}.`,
    partOf: (sheet) =>
      `Aucune colonne n’indique la partie de la structure : le nom de la feuille « ${sheet} » en tient lieu.`,
    because: french,
    sheets: (names) =>
      listed(
        names.map((name) => `« ${name} »`),
        'et',
      ),
    channels: (count) => `${count} ${count === 1 ? 'voie' : 'voies'}`,
  },
};
