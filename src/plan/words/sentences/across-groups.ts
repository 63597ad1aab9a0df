import type { InLanguages } from '../../../core/language';
import type { AcrossFinding } from '../../finding';
import { dateText } from '../../json-date';
import { numbersIn } from './numbers';

type Of<C extends AcrossFinding['check']> = Extract<AcrossFinding, { check: C }>;

interface GroupWords {
  /** One of the places in a line about several of a kind. */
  readonly load: (finding: Of<'added masses'>) => string;
  readonly more: (names: string, count: number) => string;
  readonly loads: (count: number, places: string) => string;
  readonly loadsUnknown: (count: number, places: string) => string;
  readonly openAxes: (count: number, places: string) => string;
  readonly due: (count: number, sensors: string) => string;
  readonly sameLine: (count: number, places: string) => string;
}

const EN = numbersIn('en');
const DE = numbersIn('de');
const FR = numbersIn('fr');
const ratio = ({ ratioAgainst }: typeof EN, { number, limit }: Of<'added masses'>): string | undefined =>
  number === undefined ? undefined : ratioAgainst(number, limit)[0];

export const GROUP_WORDS: InLanguages<GroupWords> = {
  en: {
    load: (f) => [f.place, f.isBound && 'at least', ratio(EN, f)].filter(Boolean).join(' '),
    more: (names, count) => `${names} and ${count} more`,
    loads: (count, places) => `Sensors together exceed the limit of the mass ratio at ${count} places: ${places}.`,
    loadsUnknown: (count, places) => `Mass ratio of sensors together not known in full at ${count} places: ${places}.`,
    openAxes: (count, places) =>
      `${count} sensors with two or three axes leave axes open: ${places}. Add the missing ones, or say that they stay open.`,
    due: (count, sensors) => `Calibration of ${count} sensors is due before their runs are over: ${sensors}.`,
    sameLine: (count, places) =>
      `Several channels measure along one line at ${count} points: ${places}. Keep them only if that is meant.`,
  },
  de: {
    load: (f) => [f.place, f.isBound && 'mindestens', ratio(DE, f)].filter(Boolean).join(' '),
    more: (names, count) => `${names} und ${count} weitere`,
    loads: (count, places) =>
      `Mehrere Aufnehmer zusammen überschreiten die Grenze des Massenverhältnisses an ${count} Stellen: ${places}.`,
    loadsUnknown: (count, places) =>
      `Das Massenverhältnis mehrerer Aufnehmer zusammen ist an ${count} Stellen nicht ganz bekannt: ${places}.`,
    openAxes: (count, places) =>
      `Bei ${count} Aufnehmern mit zwei oder drei Achsen bleiben Achsen offen: ${places}. Ergänzen Sie die fehlenden oder vermerken Sie, dass sie offen bleiben.`,
    due: (count, sensors) => `Bei ${count} Aufnehmern läuft die Kalibrierung vor dem Ende ihres Laufs ab: ${sensors}.`,
    sameLine: (count, places) =>
      `An ${count} Messpunkten messen mehrere Kanäle längs einer Linie: ${places}. Nur so lassen, wenn das gewollt ist.`,
  },
  fr: {
    load: (f) => [f.place, f.isBound && 'au moins', ratio(FR, f)].filter(Boolean).join(' '),
    more: (names, count) => `${names} et ${count} autres`,
    loads: (count, places) =>
      `Plusieurs capteurs ensemble dépassent la limite du rapport de masse à ${count} endroits : ${places}.`,
    loadsUnknown: (count, places) =>
      `Le rapport de masse de plusieurs capteurs ensemble n’est pas entièrement connu à ${count} endroits : ${places}.`,
    openAxes: (count, places) =>
      `${count} capteurs à deux ou trois axes laissent des axes libres : ${places}. Ajoutez ceux qui manquent ou notez qu’ils restent libres.`,
    due: (count, sensors) =>
      `L’étalonnage de ${count} capteurs arrive à échéance avant la fin de leur campagne : ${sensors}.`,
    sameLine: (count, places) =>
      `Plusieurs voies mesurent suivant une même droite à ${count} points : ${places}. À garder seulement si c’est voulu.`,
  },
};

/** How findings of this kind are named together, if they are. */
export const groupedAs = (finding: AcrossFinding): string | undefined => {
  const { check, verdict } = finding;
  if (check === 'housing axes') return finding.problem === 'missing' ? `${check} ${verdict}` : undefined;
  return check === 'added masses' || check === 'calibration due' || check === 'same direction'
    ? `${check} ${verdict}`
    : undefined;
};

/** The place or thing that one finding of a group is about. */
export const memberOf = (finding: AcrossFinding, words: GroupWords): string => {
  switch (finding.check) {
    case 'added masses':
      return words.load(finding);
    case 'housing axes':
      return `${finding.point} (${finding.directions.join(', ')})`;
    case 'calibration due':
      return `${finding.sensor} (${dateText(finding.number)})`;
    case 'same direction':
      return `${finding.point} (${finding.direction})`;
    default:
      return '';
  }
};

/** One line for all of them. */
export const groupSentence = (first: AcrossFinding, count: number, members: string, words: GroupWords): string => {
  if (first.check === 'housing axes') return words.openAxes(count, members);
  if (first.check === 'calibration due') return words.due(count, members);
  if (first.check === 'same direction') return words.sameLine(count, members);
  return first.verdict === 'INCOMPLETE' ? words.loadsUnknown(count, members) : words.loads(count, members);
};
