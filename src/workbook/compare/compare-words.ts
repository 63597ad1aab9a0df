import type { InLanguages } from '../../core/language';
import type { MatchedBy } from '../../plan/compare-match';
import type { ListName } from '../../plan/item-fields';
import type { Headline } from '../results';

export const COMPARE_SECTIONS = [
  'verdicts',
  'renamed',
  'edited',
  'added',
  'removed',
  'lists',
  'limits',
  'together',
] as const;
export type CompareSectionKey = (typeof COMPARE_SECTIONS)[number];

export interface CompareWords {
  readonly title: string;
  readonly nothing: string;
  readonly sections: Readonly<Record<CompareSectionKey, string>>;
  readonly turns: (worse: string, better: string) => string;
  readonly respelt: (count: string, isOne: boolean) => string;
  readonly blank: string;
  readonly unreadable: string;
  readonly quoted: (text: string) => string;
  readonly labelled: (label: string, text: string) => string;
  readonly typed: (before: string, after: string) => string;
  readonly headlines: Readonly<Record<Headline, string>>;
  readonly lists: Readonly<Record<ListName, string>>;
  readonly listKinds: Readonly<Record<'added' | 'removed', string>>;
  readonly usedBy: (count: string, isOne: boolean, names: string) => string;
  readonly usedByNone: string;
  readonly more: (names: string, count: number) => string;
  readonly renamed: (before: string, by: MatchedBy) => string;
  readonly now: (sentence: string) => string;
  readonly noLonger: (sentence: string) => string;
  readonly because: (causes: string, onlyTogether: boolean) => string;
  readonly ofItem: (table: ListName, name: string, change: string) => string;
  readonly limit: (name: string, bound: 'pass' | 'warn') => string;
  readonly calibration: string;
  readonly order: string;
}

const english: CompareWords = {
  title: 'What changed',
  nothing: 'Nothing changed: both revisions say the same, channel by channel and list by list.',
  sections: {
    verdicts: 'Verdicts that changed',
    renamed: 'Renamed? Please confirm',
    edited: 'Changed without a change of verdict',
    added: 'Channels added',
    removed: 'Channels removed',
    lists: 'Lists of sensors, mounts, cables and inputs',
    limits: 'Limits',
    together: 'Rows taken together',
  },
  turns: (worse, better) => `${worse} worse, ${better} better`,
  respelt: (count, isOne) =>
    `${count} ${isOne ? 'cell is' : 'cells are'} typed otherwise and ${isOne ? 'reads' : 'read'} the same.`,
  blank: 'blank',
  unreadable: 'not readable',
  quoted: (text) => `“${text}”`,
  labelled: (label, text) => `${label}: ${text}`,
  typed: (before, after) => `typed ${before} → ${after}`,
  headlines: { level: 'Level', mass: 'Mass', thermal: 'Thermal', frequency: 'Frequency' },
  lists: { sensors: 'Sensor type', mounts: 'Mount', cables: 'Cable', inputs: 'Input' },
  listKinds: { added: 'new in the list', removed: 'no longer in the list' },
  usedBy: (count, isOne, names) => `Named by ${count} ${isOne ? 'channel' : 'channels'}: ${names}.`,
  usedByNone: 'No channel names it.',
  more: (names, count) => `${names} and ${count} more`,
  renamed: (before, by) =>
    `Was “${before}”, if it is the same channel: ${by === 'point' ? 'point, direction and structure part' : 'place, direction and structure part'} are the same.`,
  now: (sentence) => `Now: ${sentence}`,
  noLonger: (sentence) => `No longer: ${sentence}`,
  because: (causes, onlyTogether) => `Because of${onlyTogether ? ' these together' : ''}: ${causes}.`,
  ofItem: (table, name, change) => `${english.lists[table]} “${name}”, ${change}`,
  limit: (name, bound) => `${name}, ${bound === 'pass' ? 'PASS' : 'WARN'}`,
  calibration: 'Calibration temperature',
  order: 'The row has no name; it was found by its order.',
};

const german: CompareWords = {
  title: 'Was sich geändert hat',
  nothing: 'Nichts hat sich geändert: Beide Stände sagen dasselbe, Kanal für Kanal und Liste für Liste.',
  sections: {
    verdicts: 'Geänderte Urteile',
    renamed: 'Umbenannt? Bitte bestätigen',
    edited: 'Geändert ohne anderes Urteil',
    added: 'Neue Kanäle',
    removed: 'Entfallene Kanäle',
    lists: 'Listen der Aufnehmer, Ankopplungen, Kabel und Eingänge',
    limits: 'Grenzwerte',
    together: 'Zeilen zusammen betrachtet',
  },
  turns: (worse, better) => `${worse} schlechter, ${better} besser`,
  respelt: (count, isOne) =>
    `${count} ${isOne ? 'Zelle ist' : 'Zellen sind'} anders geschrieben und ${isOne ? 'liest' : 'lesen'} sich gleich.`,
  blank: 'leer',
  unreadable: 'nicht lesbar',
  quoted: (text) => `„${text}“`,
  labelled: (label, text) => `${label}: ${text}`,
  typed: (before, after) => `geschrieben ${before} → ${after}`,
  headlines: { level: 'Pegel', mass: 'Masse', thermal: 'Temperatur', frequency: 'Frequenz' },
  lists: { sensors: 'Aufnehmertyp', mounts: 'Ankopplung', cables: 'Kabel', inputs: 'Eingang' },
  listKinds: { added: 'neu in der Liste', removed: 'nicht mehr in der Liste' },
  usedBy: (count, isOne, names) => `Genannt von ${count} ${isOne ? 'Kanal' : 'Kanälen'}: ${names}.`,
  usedByNone: 'Kein Kanal nennt es.',
  more: (names, count) => `${names} und ${count} weitere`,
  renamed: (before, by) =>
    `Hieß „${before}“, falls es derselbe Kanal ist: ${by === 'point' ? 'Messpunkt, Richtung und Bauteil' : 'Ort, Richtung und Bauteil'} sind gleich.`,
  now: (sentence) => `Jetzt: ${sentence}`,
  noLonger: (sentence) => `Nicht mehr: ${sentence}`,
  because: (causes, onlyTogether) => `${onlyTogether ? 'Ursachen, nur zusammen' : 'Ursache'}: ${causes}.`,
  ofItem: (table, name, change) => `${german.lists[table]} „${name}“, ${change}`,
  limit: (name, bound) => `${name}, ${bound === 'pass' ? 'PASS' : 'WARN'}`,
  calibration: 'Kalibriertemperatur',
  order: 'Die Zeile hat keinen Namen; sie wurde nach der Reihenfolge gefunden.',
};

const french: CompareWords = {
  title: 'Ce qui a changé',
  nothing: 'Rien n’a changé : les deux révisions disent la même chose, voie par voie et liste par liste.',
  sections: {
    verdicts: 'Verdicts modifiés',
    renamed: 'Renommées ? À confirmer',
    edited: 'Modifiées sans changement de verdict',
    added: 'Voies ajoutées',
    removed: 'Voies supprimées',
    lists: 'Listes des capteurs, fixations, câbles et entrées',
    limits: 'Limites',
    together: 'Lignes prises ensemble',
  },
  turns: (worse, better) => `${worse} moins bonnes, ${better} meilleures`,
  respelt: (count, isOne) =>
    `${count} ${isOne ? 'cellule est écrite autrement et se lit' : 'cellules sont écrites autrement et se lisent'} de même.`,
  blank: 'vide',
  unreadable: 'illisible',
  quoted: (text) => `« ${text} »`,
  labelled: (label, text) => `${label} : ${text}`,
  typed: (before, after) => `écrit ${before} → ${after}`,
  headlines: { level: 'Niveau', mass: 'Masse', thermal: 'Température', frequency: 'Fréquence' },
  lists: { sensors: 'Type de capteur', mounts: 'Fixation', cables: 'Câble', inputs: 'Entrée' },
  listKinds: { added: 'nouveau dans la liste', removed: 'absent de la liste désormais' },
  usedBy: (count, isOne, names) => `Nommé par ${count} ${isOne ? 'voie' : 'voies'} : ${names}.`,
  usedByNone: 'Aucune voie ne le nomme.',
  more: (names, count) => `${names} et ${count} autres`,
  renamed: (before, by) =>
    `Était « ${before} », si c’est la même voie : ${by === 'point' ? 'point, direction et partie de structure' : 'emplacement, direction et partie de structure'} sont les mêmes.`,
  now: (sentence) => `Maintenant : ${sentence}`,
  noLonger: (sentence) => `Ne vaut plus : ${sentence}`,
  because: (causes, onlyTogether) => `${onlyTogether ? 'Causes, seulement ensemble' : 'Cause'} : ${causes}.`,
  ofItem: (table, name, change) => `${french.lists[table]} « ${name} », ${change}`,
  limit: (name, bound) => `${name}, ${bound === 'pass' ? 'PASS' : 'WARN'}`,
  calibration: 'Température d’étalonnage',
  order: 'La ligne n’a pas de nom ; elle a été trouvée par son ordre.',
};

export const COMPARE_WORDS: InLanguages<CompareWords> = { en: english, de: german, fr: french };
