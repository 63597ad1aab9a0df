import { countIn, type InLanguages, type Language } from '../../core/language';
import type { Cell } from '../../functions/define';
import { cellAddress } from '../address';
import { typedText } from '../compare/compared-plan';
import type { Beside } from './beside';
import type { Care, Returned, ReturnedCell } from './returned-cells';

interface ReturnedWords {
  readonly title: string;
  readonly changed: (count: string, isOne: boolean) => string;
  readonly nothing: string;
  readonly blank: string;
  readonly cares: Readonly<Record<Care, (now: string, sent: string) => string>>;
  readonly added: (names: string) => string;
  readonly missing: (count: string, isOne: boolean, names: string) => string;
  readonly columnsMissing: (names: string) => string;
  readonly unreadable: (places: string) => string;
  readonly beside: string;
  readonly note: string;
  readonly oursNewer: (count: string, isOne: boolean) => string;
  readonly more: (names: string, count: string) => string;
  readonly step: string;
}

export const RETURNED_WORDS: InLanguages<ReturnedWords> = {
  en: {
    title: 'What came back',
    changed: (count, isOne) => `${count} ${isOne ? 'cell differs' : 'cells differ'} from the plan.`,
    nothing: 'Nothing in the copy differs from the plan.',
    blank: 'blank',
    cares: {
      formula: (now) => `a formula stands here: ${now}`,
      conflict: (_, sent) => `changed on both sides; the copy left with ${sent}`,
      renamed: () => 'the channel has another name in the copy; it was found by its point or place',
    },
    added: (names) => `Only in the copy, to be added by hand: ${names}.`,
    missing: (count, isOne, names) =>
      `${count} ${isOne ? 'row is' : 'rows are'} not in the copy and ${isOne ? 'stays' : 'stay'}: ${names}.`,
    note: 'note',
    beside: 'Written in the copy where the plan has no column; read it, it is not taken over:',
    columnsMissing: (names) => `Columns that the copy does not have stay as they are: ${names}.`,
    unreadable: (places) => `Error values or formulas without a value in the copy, left aside: ${places}.`,
    oursNewer: (count, isOne) =>
      `${count} ${isOne ? 'cell was' : 'cells were'} changed in the plan alone since the copy left and ${isOne ? 'stays' : 'stay'}.`,
    more: (names, count) => `${names} and ${count} more`,
    step: 'Take cells back from a copy',
  },
  de: {
    title: 'Was zurückkam',
    changed: (count, isOne) => `${count} ${isOne ? 'Zelle weicht' : 'Zellen weichen'} vom Plan ab.`,
    nothing: 'Nichts in der Kopie weicht vom Plan ab.',
    blank: 'leer',
    cares: {
      formula: (now) => `hier steht eine Formel: ${now}`,
      conflict: (_, sent) => `auf beiden Seiten geändert; die Kopie ging mit ${sent} hinaus`,
      renamed: () => 'der Kanal heißt in der Kopie anders; er wurde über Messpunkt oder Ort gefunden',
    },
    added: (names) => `Nur in der Kopie, von Hand zu ergänzen: ${names}.`,
    missing: (count, isOne, names) =>
      `${count} ${isOne ? 'Zeile ist' : 'Zeilen sind'} nicht in der Kopie und ${isOne ? 'bleibt' : 'bleiben'}: ${names}.`,
    note: 'Notiz',
    beside: 'In der Kopie dort geschrieben, wo der Plan keine Spalte hat; zu lesen, es wird nicht übernommen:',
    columnsMissing: (names) => `Spalten, die die Kopie nicht hat, bleiben wie sie sind: ${names}.`,
    unreadable: (places) => `Fehlerwerte oder Formeln ohne Wert in der Kopie, nicht beachtet: ${places}.`,
    oursNewer: (count, isOne) =>
      `${count} ${isOne ? 'Zelle wurde' : 'Zellen wurden'} seither nur im Plan geändert und ${isOne ? 'bleibt' : 'bleiben'}.`,
    more: (names, count) => `${names} und ${count} weitere`,
    step: 'Zellen aus einer Kopie übernehmen',
  },
  fr: {
    title: 'Ce qui est revenu',
    changed: (count, isOne) => `${count} ${isOne ? 'cellule diffère' : 'cellules diffèrent'} du plan.`,
    nothing: 'Rien dans la copie ne diffère du plan.',
    blank: 'vide',
    cares: {
      formula: (now) => `une formule se trouve ici : ${now}`,
      conflict: (_, sent) => `modifiée des deux côtés ; la copie est partie avec ${sent}`,
      renamed: () => 'la voie porte un autre nom dans la copie ; elle a été trouvée par son point ou son emplacement',
    },
    added: (names) => `Seulement dans la copie, à ajouter à la main : ${names}.`,
    missing: (count, isOne, names) =>
      `${count} ${isOne ? 'ligne n’est pas' : 'lignes ne sont pas'} dans la copie et ${isOne ? 'reste' : 'restent'} : ${names}.`,
    note: 'note',
    beside: 'Écrit dans la copie là où le plan n’a pas de colonne ; à lire, rien n’en est repris :',
    columnsMissing: (names) => `Les colonnes que la copie n’a pas restent telles quelles : ${names}.`,
    unreadable: (places) => `Valeurs d’erreur ou formules sans valeur dans la copie, laissées de côté : ${places}.`,
    oursNewer: (count, isOne) =>
      `${count} ${isOne ? 'cellule a été modifiée' : 'cellules ont été modifiées'} depuis dans le plan seul et ${isOne ? 'reste' : 'restent'}.`,
    more: (names, count) => `${names} et ${count} autres`,
    step: 'Reprendre des cellules d’une copie',
  },
};

const MOST_NAMES = 8;
const listed = (names: readonly string[], language: Language): string =>
  names.length <= MOST_NAMES
    ? names.join(', ')
    : RETURNED_WORDS[language].more(
        names.slice(0, MOST_NAMES).join(', '),
        countIn(names.length - MOST_NAMES, language),
      );

const shown = (cell: Cell | undefined, language: Language): string => {
  const text = typedText(cell);
  return text.trim() === '' ? RETURNED_WORDS[language].blank : text;
};

export const cellPlace = ({ at }: Pick<ReturnedCell, 'at'>): string => `${at.sheet}!${cellAddress(at.row, at.column)}`;

/** "W004, Highest level [g pk]". */
export const cellName = ({ item, heading }: ReturnedCell): string => `${item}, ${heading}`;

/** "W004, Remark: please use a lighter one". */
export const besideText = ({ item, heading, text, isNote }: Beside, language: Language): string =>
  `${[item, heading.trim(), isNote && RETURNED_WORDS[language].note].filter(Boolean).join(', ')}: ${typedText(text)}`;

/** "48 → 70 g pk", as typed. */
export const cellTurn = ({ now, returned }: ReturnedCell, language: Language): string =>
  `${shown(now, language)} → ${shown(returned, language)}`;

/** What to mind before the cell is taken. */
export const cellCares = ({ cares, formula, sent }: ReturnedCell, language: Language): readonly string[] =>
  cares.map((care) => RETURNED_WORDS[language].cares[care](formula, shown(sent, language)));

/** Everything beside the cells themselves, in sentences. */
export const returnedOutcome = (returned: Returned, language: Language): readonly string[] => {
  const words = RETURNED_WORDS[language];
  const { cells, added, missing, columnsMissing, unreadable, oursNewer } = returned;
  const count = (number: number) => [countIn(number, language), number === 1] as const;
  return [
    cells.length > 0 ? words.changed(...count(cells.length)) : words.nothing,
    ...(oursNewer > 0 ? [words.oursNewer(...count(oursNewer))] : []),
    ...(added.length > 0 ? [words.added(listed(added, language))] : []),
    ...(missing.length > 0 ? [words.missing(...count(missing.length), listed(missing, language))] : []),
    ...(columnsMissing.length > 0 ? [words.columnsMissing(listed(columnsMissing, language))] : []),
    ...(unreadable.length > 0 ? [words.unreadable(listed(unreadable, language))] : []),
  ];
};
