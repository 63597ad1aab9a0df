import type { InLanguages } from '../../core/language';
import { OWN_COLUMNS, type OwnKey } from '../own-columns';

/** Our columns that a customer gets; working columns stay at home. */
export const SHARED_COLUMNS = OWN_COLUMNS.filter(({ kind }) => kind !== 'working');

type Shared = Exclude<OwnKey, 'noise' | 'ceiling' | 'sensitivity' | `${string}Line`>;
const GERMAN: Readonly<Record<Shared, string>> = {
  verdict: 'Kanalurteil',
  reason: 'Begründung',
  signalToNoise: 'Signal-Rausch-Abstand, dB',
  headroom: 'Aussteuerungsreserve, dB',
  levelVerdict: 'Pegelprüfung',
  massRatio: 'Massenverhältnis',
  massVerdict: 'Massenprüfung',
  thermalLow: 'Temperaturabweichung unten, %',
  thermalHigh: 'Temperaturabweichung oben, %',
  thermalVerdict: 'Temperaturprüfung',
  spanLow: 'Nutzbar ab, Hz',
  spanHigh: 'Nutzbar bis, Hz',
  frequencyVerdict: 'Frequenzprüfung',
};
const FRENCH: Readonly<Record<Shared, string>> = {
  verdict: 'Verdict de la voie',
  reason: 'Motif',
  signalToNoise: 'Rapport signal sur bruit, dB',
  headroom: 'Réserve de dynamique, dB',
  levelVerdict: 'Contrôle du niveau',
  massRatio: 'Rapport de masses',
  massVerdict: 'Contrôle de la masse',
  thermalLow: 'Écart thermique bas, %',
  thermalHigh: 'Écart thermique haut, %',
  thermalVerdict: 'Contrôle thermique',
  spanLow: 'Utilisable dès, Hz',
  spanHigh: "Utilisable jusqu'à, Hz",
  frequencyVerdict: 'Contrôle de fréquence',
};
const ENGLISH = Object.fromEntries(SHARED_COLUMNS.map(({ key, heading }) => [key, heading])) as Record<Shared, string>;

const HEADINGS: InLanguages<Readonly<Record<Shared, string>>> = { en: ENGLISH, de: GERMAN, fr: FRENCH };

export const sharedHeadings = (language: keyof typeof HEADINGS): readonly string[] =>
  SHARED_COLUMNS.map(({ key }) => HEADINGS[language][key as Shared]);
