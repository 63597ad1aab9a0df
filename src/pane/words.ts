import type { InLanguages } from '../core/language';
import type { Verdict } from '../core/verdict';
import type { TableName } from '../plan/fields';
import type { Headline } from '../workbook/results';

/** The texts of the pane's own frame. Verdict words, names of functions and what the user's cells say stay as they are. */
export interface PaneWords {
  readonly check: string;
  readonly channelList: string;
  readonly channelsOn: (count: string, one: boolean, where: string) => string;
  readonly checkChannels: string;
  readonly checkAgain: string;
  readonly stop: string;
  readonly busy: { readonly reading: string; readonly checking: string; readonly writing: string };
  readonly counts: string;
  readonly meaning: Readonly<Record<Verdict, string>>;
  readonly rows: string;
  readonly rowsWith: (verdicts: string) => string;
  readonly noRowsChosen: string;
  readonly noRows: string;
  readonly worstFirst: string;
  readonly more: (left: string) => string;
  readonly headlines: Readonly<Record<Headline, string>>;
  readonly mind: (titles: string) => string;
  readonly columns: string;
  readonly toDecide: (count: string) => string;
  readonly allFound: string;
  readonly tables: Readonly<Record<TableName, string>>;
  readonly notInList: string;
  readonly columnsOf: (table: string) => string;
  readonly fieldsNotIn: (table: string) => string;
  readonly moreFields: (count: string) => string;
  readonly unread: string;
  readonly across: string;
  readonly cautions: string;
}

const english: PaneWords = {
  check: 'Check',
  channelList: 'Channel list',
  channelsOn: (count, one, where) => `${count} ${one ? 'channel' : 'channels'} on ${where}`,
  checkChannels: 'Check channels',
  checkAgain: 'Check again',
  stop: 'Stop',
  busy: { reading: 'Reading', checking: 'Checking', writing: 'Writing' },
  counts: 'Channels by verdict; press to show or hide them below',
  meaning: {
    PASS: 'all four checks hold',
    WARN: 'usable with care',
    FAIL: 'a number is beyond its limit',
    INCOMPLETE: 'something needed is not known',
  },
  rows: 'Rows',
  rowsWith: (verdicts) => `Rows with ${verdicts}`,
  noRowsChosen: 'No rows chosen',
  noRows: 'No channel with the verdicts chosen above.',
  worstFirst: 'Channels, worst first',
  more: (left) => `Show more (${left} left)`,
  headlines: {
    level: 'Level range',
    mass: 'Mass loading',
    thermal: 'Thermal deviation',
    frequency: 'Frequency span',
  },
  mind: (titles) => `Mind here: ${titles}.`,
  columns: 'Columns as read',
  toDecide: (count) => `${count} to decide`,
  allFound: 'all found',
  tables: {
    channels: 'Channel list',
    sensors: 'Sensor list',
    mounts: 'Mount list',
    cables: 'Cable list',
    inputs: 'Input list',
    limits: 'Limits',
  },
  notInList: 'not in this list',
  columnsOf: (table) => `How the columns of the ${table.toLowerCase()} are read`,
  fieldsNotIn: (table) => `Fields that the ${table.toLowerCase()} does not have`,
  moreFields: (count) => `${count} more fields, not in this list`,
  unread: 'Cells that could not be read',
  across: 'Rows taken together',
  cautions: 'Cautions for this plan',
};

const german: PaneWords = {
  check: 'Prüfung',
  channelList: 'Kanalliste',
  channelsOn: (count, one, where) => `${count} ${one ? 'Kanal' : 'Kanäle'} auf ${where}`,
  checkChannels: 'Kanäle prüfen',
  checkAgain: 'Erneut prüfen',
  stop: 'Anhalten',
  busy: { reading: 'Wird gelesen', checking: 'Wird geprüft', writing: 'Wird geschrieben' },
  counts: 'Kanäle nach Urteil; drücken, um sie unten zu zeigen oder auszublenden',
  meaning: {
    PASS: 'alle vier Prüfungen sind erfüllt',
    WARN: 'mit Vorsicht verwendbar',
    FAIL: 'eine Zahl liegt jenseits ihrer Grenze',
    INCOMPLETE: 'etwas Nötiges ist nicht bekannt',
  },
  rows: 'Zeilen',
  rowsWith: (verdicts) => `Zeilen mit ${verdicts}`,
  noRowsChosen: 'Keine Zeilen gewählt',
  noRows: 'Kein Kanal mit den oben gewählten Urteilen.',
  worstFirst: 'Kanäle, die schlechtesten zuerst',
  more: (left) => `Mehr zeigen (noch ${left})`,
  headlines: {
    level: 'Pegelbereich',
    mass: 'Massenbelastung',
    thermal: 'Temperaturgang',
    frequency: 'Frequenzbereich',
  },
  mind: (titles) => `Hier zu beachten: ${titles}.`,
  columns: 'Gelesene Spalten',
  toDecide: (count) => `${count} zu entscheiden`,
  allFound: 'alle gefunden',
  tables: {
    channels: 'Kanalliste',
    sensors: 'Aufnehmerliste',
    mounts: 'Ankopplungsliste',
    cables: 'Kabelliste',
    inputs: 'Eingangsliste',
    limits: 'Grenzwerte',
  },
  notInList: 'nicht in dieser Liste',
  columnsOf: (table) => `So werden die Spalten gelesen: ${table}`,
  fieldsNotIn: (table) => `Nicht vorhandene Felder: ${table}`,
  moreFields: (count) => `${count} weitere Felder, nicht in dieser Liste`,
  unread: 'Nicht lesbare Zellen',
  across: 'Zeilen zusammen betrachtet',
  cautions: 'Vorsicht bei diesem Plan',
};

const french: PaneWords = {
  check: 'Contrôle',
  channelList: 'Liste des voies',
  channelsOn: (count, one, where) => `${count} ${one ? 'voie' : 'voies'} sur ${where}`,
  checkChannels: 'Contrôler les voies',
  checkAgain: 'Contrôler de nouveau',
  stop: 'Arrêter',
  busy: { reading: 'Lecture', checking: 'Contrôle', writing: 'Écriture' },
  counts: 'Voies par verdict ; appuyer pour les montrer ou les masquer ci-dessous',
  meaning: {
    PASS: 'les quatre contrôles sont satisfaits',
    WARN: 'utilisable avec précaution',
    FAIL: 'un nombre dépasse sa limite',
    INCOMPLETE: 'une donnée nécessaire est inconnue',
  },
  rows: 'Lignes',
  rowsWith: (verdicts) => `Lignes avec ${verdicts}`,
  noRowsChosen: 'Aucune ligne choisie',
  noRows: 'Aucune voie avec les verdicts choisis ci-dessus.',
  worstFirst: 'Voies, les plus mauvaises d’abord',
  more: (left) => `Montrer plus (encore ${left})`,
  headlines: {
    level: 'Plage de niveaux',
    mass: 'Charge massique',
    thermal: 'Dérive thermique',
    frequency: 'Plage de fréquences',
  },
  mind: (titles) => `À prendre en compte ici : ${titles}.`,
  columns: 'Colonnes lues',
  toDecide: (count) => `${count} à décider`,
  allFound: 'toutes trouvées',
  tables: {
    channels: 'Liste des voies',
    sensors: 'Liste des capteurs',
    mounts: 'Liste des fixations',
    cables: 'Liste des câbles',
    inputs: 'Liste des entrées',
    limits: 'Limites',
  },
  notInList: 'absent de cette liste',
  columnsOf: (table) => `Lecture des colonnes : ${table}`,
  fieldsNotIn: (table) => `Champs absents : ${table}`,
  moreFields: (count) => `${count} autres champs, absents de cette liste`,
  unread: 'Cellules illisibles',
  across: 'Lignes prises ensemble',
  cautions: 'Précautions pour ce plan',
};

export const PANE_WORDS: InLanguages<PaneWords> = { en: english, de: german, fr: french };
