import type { CeilingCause } from '../core/level/ceiling';
import type { InLanguages } from '../core/language';
import type { TableName } from '../plan/fields';

/** What the commands on a workbook say beside the sentences of the checks. */
export interface SessionWords {
  readonly noList: string;
  readonly listFrom: (table: TableName, sheet: string) => string;
  readonly noListOf: (table: TableName) => string;
  readonly asYouSaid: string;
  readonly notSure: (candidates: readonly string[]) => string;
  readonly notHereAsSaid: string;
  readonly noColumn: string;
  readonly sure: (percent: number) => string;
  readonly readIn: (unit: string) => string;
  readonly noHeading: string;
  readonly notKnown: string;
  readonly empty: string;
  readonly to: string;
  readonly lowest: string;
  readonly noise: string;
  readonly signalToNoise: string;
  readonly highest: string;
  readonly upperLimit: (cause: CeilingCause | undefined) => string;
  readonly headroom: string;
  readonly rangeNeeded: string;
  readonly rangeAvailable: string;
  readonly addedMass: string;
  readonly localMass: string;
  readonly massRatio: string;
  readonly heaviest: string;
  readonly levelEffect: string;
  readonly frequencyEffect: string;
  readonly temperature: string;
  readonly deviation: string;
  readonly halfBand: string;
  readonly bandNeeded: string;
  readonly spanAt: (tolerance: string) => string;
  readonly resonance: string;
}

const english: SessionWords = {
  noList:
    'No channel list was found. Expected is a sheet with one row per channel under a heading row that names at least the channel, the sensor type, the levels, the band and the temperatures; units may stand in the headings.',
  listFrom: (table, sheet) => `${table} from “${sheet}”`,
  noListOf: (table) => `no ${table} list`,
  asYouSaid: 'as you said',
  notSure: (candidates) => `Not sure enough: ${candidates.join(' or ')}?`,
  notHereAsSaid: 'not in this list, as you said',
  noColumn: 'no column found',
  sure: (percent) => `${percent} % sure`,
  readIn: (unit) => `numbers are read in ${unit}`,
  noHeading: 'no heading',
  notKnown: 'not known',
  empty: 'empty',
  to: 'to',
  lowest: 'Lowest level, r.m.s.',
  noise: 'Noise in the band, r.m.s.',
  signalToNoise: 'Signal to noise',
  highest: 'Highest level, peak',
  upperLimit: (cause) => `Upper limit${cause ? ` (${cause})` : ''}`,
  headroom: 'Headroom',
  rangeNeeded: 'Range needed',
  rangeAvailable: 'Range available',
  addedMass: 'Added mass',
  localMass: 'Local mass',
  massRatio: 'Mass ratio',
  heaviest: 'Heaviest sensor that passes',
  levelEffect: 'Effect on the level',
  frequencyEffect: 'Effect on natural frequencies',
  temperature: 'Temperature',
  deviation: 'Deviation',
  halfBand: 'Left after scaling to the middle',
  bandNeeded: 'Band needed',
  spanAt: (tolerance) => `Span at ±${tolerance} %`,
  resonance: 'Mounted resonance',
};

const LISTS_DE: Readonly<Record<TableName, string>> = {
  channels: 'Kanäle',
  sensors: 'Aufnehmer',
  mounts: 'Ankopplungen',
  cables: 'Kabel',
  inputs: 'Eingänge',
  limits: 'Grenzwerte',
};
const CEILING_DE: Readonly<Record<CeilingCause, string>> = {
  'full scale': 'Messbereich',
  'input range': 'Eingangsbereich',
  'bias swing': 'Aussteuerung um die Ruhespannung',
  'amplifier output': 'Verstärkerausgang',
};
const german: SessionWords = {
  noList:
    'Keine Kanalliste gefunden. Erwartet wird ein Blatt mit einer Zeile je Kanal unter einer Kopfzeile, die wenigstens Kanal, Aufnehmertyp, Pegel, Band und Temperaturen nennt; Einheiten dürfen in der Kopfzeile stehen.',
  listFrom: (table, sheet) => `${LISTS_DE[table]} aus „${sheet}“`,
  noListOf: (table) => `keine Liste: ${LISTS_DE[table]}`,
  asYouSaid: 'wie von Ihnen gesagt',
  notSure: (candidates) => `Nicht sicher genug: ${candidates.join(' oder ')}?`,
  notHereAsSaid: 'nicht in dieser Liste, wie von Ihnen gesagt',
  noColumn: 'keine Spalte gefunden',
  sure: (percent) => `${percent} % Gewissheit`,
  readIn: (unit) => `Zahlen werden in ${unit} gelesen`,
  noHeading: 'ohne Überschrift',
  notKnown: 'nicht bekannt',
  empty: 'leer',
  to: 'bis',
  lowest: 'Kleinster Pegel, effektiv',
  noise: 'Rauschen im Band, effektiv',
  signalToNoise: 'Rauschabstand',
  highest: 'Größter Pegel, Spitze',
  upperLimit: (cause) => `Obere Grenze${cause ? ` (${CEILING_DE[cause]})` : ''}`,
  headroom: 'Aussteuerreserve',
  rangeNeeded: 'Benötigter Umfang',
  rangeAvailable: 'Verfügbarer Umfang',
  addedMass: 'Zusatzmasse',
  localMass: 'Örtliche Masse',
  massRatio: 'Massenverhältnis',
  heaviest: 'Schwerster zulässiger Aufnehmer',
  levelEffect: 'Wirkung auf den Pegel',
  frequencyEffect: 'Wirkung auf Eigenfrequenzen',
  temperature: 'Temperatur',
  deviation: 'Abweichung',
  halfBand: 'Rest nach Bezug auf die Mitte',
  bandNeeded: 'Benötigtes Band',
  spanAt: (tolerance) => `Bereich bei ±${tolerance} %`,
  resonance: 'Resonanz mit Ankopplung',
};

const LISTS_FR: Readonly<Record<TableName, string>> = {
  channels: 'voies',
  sensors: 'capteurs',
  mounts: 'fixations',
  cables: 'câbles',
  inputs: 'entrées',
  limits: 'limites',
};
const CEILING_FR: Readonly<Record<CeilingCause, string>> = {
  'full scale': 'étendue de mesure',
  'input range': 'calibre d’entrée',
  'bias swing': 'excursion autour de la polarisation',
  'amplifier output': 'sortie de l’amplificateur',
};
const french: SessionWords = {
  noList:
    'Aucune liste de voies trouvée. Attendu : une feuille avec une ligne par voie sous une ligne d’en-tête qui nomme au moins la voie, le type de capteur, les niveaux, la bande et les températures ; les unités peuvent figurer dans l’en-tête.',
  listFrom: (table, sheet) => `${LISTS_FR[table]} de « ${sheet} »`,
  noListOf: (table) => `pas de liste : ${LISTS_FR[table]}`,
  asYouSaid: 'comme vous l’avez dit',
  notSure: (candidates) => `Pas assez sûr : ${candidates.join(' ou ')} ?`,
  notHereAsSaid: 'absent de cette liste, comme vous l’avez dit',
  noColumn: 'aucune colonne trouvée',
  sure: (percent) => `certitude ${percent} %`,
  readIn: (unit) => `les nombres sont lus en ${unit}`,
  noHeading: 'sans en-tête',
  notKnown: 'inconnu',
  empty: 'vide',
  to: 'à',
  lowest: 'Niveau le plus faible, efficace',
  noise: 'Bruit dans la bande, efficace',
  signalToNoise: 'Rapport signal sur bruit',
  highest: 'Niveau le plus fort, crête',
  upperLimit: (cause) => `Limite supérieure${cause ? ` (${CEILING_FR[cause]})` : ''}`,
  headroom: 'Réserve',
  rangeNeeded: 'Dynamique requise',
  rangeAvailable: 'Dynamique disponible',
  addedMass: 'Masse ajoutée',
  localMass: 'Masse locale',
  massRatio: 'Rapport de masse',
  heaviest: 'Capteur le plus lourd admis',
  levelEffect: 'Effet sur le niveau',
  frequencyEffect: 'Effet sur les fréquences propres',
  temperature: 'Température',
  deviation: 'Écart',
  halfBand: 'Reste après recentrage',
  bandNeeded: 'Bande requise',
  spanAt: (tolerance) => `Plage à ±${tolerance} %`,
  resonance: 'Résonance montée',
};

export const SESSION_WORDS: InLanguages<SessionWords> = { en: english, de: german, fr: french };
