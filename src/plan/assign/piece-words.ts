import type { InLanguages, Language } from '../../core/language';
import { dateText } from '../json-date';
import type { Assignment } from './assignment';

interface PieceWords {
  readonly late: (count: number, all: number, name: string, day: string, serials: string) => string;
  readonly handedOut: string;
  readonly handedOutTo: (day: string) => string;
  readonly noColumn: string;
  readonly unnamed: (list: string) => string;
}

const PIECE_WORDS: InLanguages<PieceWords> = {
  en: {
    late: (count, all, name, day, serials) =>
      `${count} of ${all} pieces of type “${name}” ${count === 1 ? 'is' : 'are'} due for calibration before the end of the test on ${day} and ${count === 1 ? 'was' : 'were'} not given out${serials === '' ? '' : `: ${serials}`}.`,
    handedOut:
      'Serial numbers: a row keeps the piece that it names where that still does; all others get the lowest free number of their type.',
    handedOutTo: (day) => `Pieces due for calibration before ${day} are not given out.`,
    noColumn:
      'The list has no column for serial numbers, such as “Serial number”: which piece goes where stands only here.',
    unnamed: (list) => `No single piece is free in all runs of these rows: ${list}.`,
  },
  de: {
    late: (count, all, name, day, serials) =>
      `${count} von ${all} Stück des Typs „${name}“ ${count === 1 ? 'ist' : 'sind'} vor dem Ende der Prüfung am ${day} zur Kalibrierung fällig und ${count === 1 ? 'wurde' : 'wurden'} nicht ausgegeben${serials === '' ? '' : `: ${serials}`}.`,
    handedOut:
      'Seriennummern: eine Zeile behält das genannte Stück, wo es noch passt; alle anderen bekommen die niedrigste freie Nummer ihres Typs.',
    handedOutTo: (day) => `Stücke, deren Kalibrierung vor dem ${day} fällig ist, werden nicht ausgegeben.`,
    noColumn:
      'Die Liste hat keine Spalte für Seriennummern, etwa „Seriennummer“: welches Stück wohin kommt, steht nur hier.',
    unnamed: (list) => `Kein einzelnes Stück ist in allen Läufen dieser Zeilen frei: ${list}.`,
  },
  fr: {
    late: (count, all, name, day, serials) =>
      `${count} exemplaire${count === 1 ? '' : 's'} sur ${all} du type « ${name} » ${count === 1 ? 'doit être étalonné' : 'doivent être étalonnés'} avant la fin de l’essai, le ${day}, et ${count === 1 ? 'n’a pas été affecté' : 'n’ont pas été affectés'}${serials === '' ? '' : ` : ${serials}`}.`,
    handedOut:
      'Numéros de série : une ligne garde l’exemplaire qu’elle nomme s’il convient encore ; les autres reçoivent le plus petit numéro libre de leur type.',
    handedOutTo: (day) => `Les exemplaires à étalonner avant le ${day} ne sont pas affectés.`,
    noColumn:
      'La liste n’a pas de colonne pour les numéros de série, telle que « Numéro de série » : la répartition des exemplaires ne figure qu’ici.',
    unnamed: (list) => `Aucun exemplaire n’est libre dans toutes les phases de ces lignes : ${list}.`,
  },
};

const MOST_NAMED = 12;
/** Types of which pieces exist that calibration keeps out: those that are short, or the others that are in use. */
export const lateWords = (
  { uses, testEnd, shortage }: Assignment,
  language: Language,
  which: 'short' | 'used' = 'short',
): readonly string[] => {
  if (testEnd === undefined) return [];
  const missing = shortage ? [...shortage.fewest, ...shortage.alone] : [];
  const short = new Set(missing.flatMap((one) => (one.kind === 'sensor' ? [one.sensor] : [])));
  return uses.flatMap(({ sensor, overdue, quantity, used, late }) => {
    if (overdue === 0 || quantity === undefined) return [];
    if (which === 'short' ? !short.has(sensor) : short.has(sensor) || used === 0) return [];
    const named = [...late.slice(0, MOST_NAMED), ...(late.length > MOST_NAMED ? ['…'] : [])].join(', ');
    return [PIECE_WORDS[language].late(overdue, quantity, sensor.name, dateText(testEnd), named)];
  });
};

/**
 * How the single pieces were given out, and where they stand if the list has no column for them; empty where none has a
 * number.
 */
export const handedOutWords = (
  assignment: Assignment,
  hasColumn: boolean,
  language: Language = 'en',
): readonly string[] => {
  const { assigned, uses, channels, testEnd } = assignment;
  const words = PIECE_WORDS[language];
  if (!assigned.some(({ serial }) => serial !== undefined)) return [];
  const numbered = new Set(uses.flatMap(({ sensor }) => (sensor.pieces?.length === sensor.quantity ? [sensor] : [])));
  const unnamed = assigned.filter(
    ({ serial, combination }) => serial === undefined && numbered.has(combination.sensor),
  );
  return [
    [words.handedOut, ...(testEnd === undefined ? [] : [words.handedOutTo(dateText(testEnd))])].join(' '),
    ...(hasColumn ? [] : [words.noColumn]),
    ...(unnamed.length > 0 ? [words.unnamed(unnamed.map(({ channel }) => channels[channel]!.id).join(', '))] : []),
  ];
};
