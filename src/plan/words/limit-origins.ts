import type { InLanguages, Language } from '../../core/language';
import { DEFAULT_ORIGIN, ROW_ORIGIN } from '../limits';

const ORIGINS: InLanguages<Readonly<Record<typeof DEFAULT_ORIGIN | typeof ROW_ORIGIN, string>>> = {
  en: { [DEFAULT_ORIGIN]: 'default, no standard', [ROW_ORIGIN]: 'this row' },
  de: { [DEFAULT_ORIGIN]: 'Vorgabe, keine Norm', [ROW_ORIGIN]: 'diese Zeile' },
  fr: { [DEFAULT_ORIGIN]: 'valeur par défaut, sans norme', [ROW_ORIGIN]: 'cette ligne' },
};

/** The origins this program gives itself are translated; what a person wrote stays. */
export const originWords = (origin: string, language: Language): string =>
  origin === DEFAULT_ORIGIN || origin === ROW_ORIGIN ? ORIGINS[language][origin] : origin;

/** Why a default is what it is, by the sentence of `plan/limits`. */
const REASONS: Readonly<Record<string, readonly [german: string, french: string]>> = {
  'noise raises an r.m.s. reading by 0.50 % at 20 dB and by 4.9 % at 10 dB': [
    'Rauschen hebt einen Effektivwert bei 20 dB um 0,50 % und bei 10 dB um 4,9 %',
    'le bruit relève une valeur efficace de 0,50 % à 20 dB et de 4,9 % à 10 dB',
  ],
  'a factor 1.5 over 3σ is 4.5σ, near the largest peak in a minute of random vibration': [
    'ein Faktor 1,5 über 3σ ist 4,5σ, etwa die größte Spitze in einer Minute Rauschanregung',
    'un facteur 1,5 sur 3σ donne 4,5σ, près de la plus grande crête en une minute de vibration aléatoire',
  ],
  'a ratio of 0.10 lowers the level by 9.1 % and the natural frequency by 4.7 %': [
    'ein Verhältnis von 0,10 senkt den Pegel um 9,1 % und die Eigenfrequenz um 4,7 %',
    'un rapport de 0,10 abaisse le niveau de 9,1 % et la fréquence propre de 4,7 %',
  ],
  'a ratio of 0.02 lowers the natural frequency by 1.0 %': [
    'ein Verhältnis von 0,02 senkt die Eigenfrequenz um 1,0 %',
    'un rapport de 0,02 abaisse la fréquence propre de 1,0 %',
  ],
  '±5 % is a usual request of vibration tests; from memory': [
    '±5 % werden in Schwingungsversuchen üblicherweise verlangt; aus dem Gedächtnis',
    '±5 % est une exigence usuelle des essais de vibration ; de mémoire',
  ],
  '±5 % is the usual flatness class of data sheets; from memory': [
    '±5 % ist die übliche Klasse des Frequenzgangs in Datenblättern; aus dem Gedächtnis',
    '±5 % est la classe usuelle de planéité des fiches techniques ; de mémoire',
  ],
};

export const reasonWords = (reason: string, language: Language): string =>
  language === 'en' ? reason : (REASONS[reason]?.[language === 'de' ? 0 : 1] ?? reason);
