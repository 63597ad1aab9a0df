import type { InLanguages, Language } from '../../core/language';
import { withUnit } from '../numbers-in-words';
import { GRAM } from '../words/sentences/numbers';
import type { Aim, Combination } from './candidate';

/** What a plan asks of a channel, one short name for each check. */
const AIM_WORDS: InLanguages<Readonly<Record<Aim, string>>> = {
  en: {
    'input mode': 'input mode',
    'signal to noise': 'lowest level (noise)',
    headroom: 'highest level',
    'mass ratio': 'added mass',
    'temperature limit': 'operating temperatures',
    'thermal deviation': 'thermal deviation',
    'span low': 'lower band edge',
    'span high': 'upper band edge',
  },
  de: {
    'input mode': 'Eingangsart',
    'signal to noise': 'kleinster Pegel (Rauschen)',
    headroom: 'größter Pegel',
    'mass ratio': 'Zusatzmasse',
    'temperature limit': 'Einsatztemperaturen',
    'thermal deviation': 'Temperaturabweichung',
    'span low': 'untere Bandgrenze',
    'span high': 'obere Bandgrenze',
  },
  fr: {
    'input mode': 'type d’entrée',
    'signal to noise': 'niveau minimal (bruit)',
    headroom: 'niveau maximal',
    'mass ratio': 'masse ajoutée',
    'temperature limit': 'températures d’emploi',
    'thermal deviation': 'écart thermique',
    'span low': 'limite basse de la bande',
    'span high': 'limite haute de la bande',
  },
};
export const aimWords = (aim: Aim, language: Language = 'en'): string => AIM_WORDS[language][aim];

/** Numbers of a finished text with the language's decimal mark. */
export const localised = (text: string, language: Language): string =>
  language === 'en' ? text : text.replace(/(\d)\.(?=\d)/g, '$1,');

/** "quiet shear (glue, short, IEPE ±1 V)": the type, then what it is used with. */
export const combinationWords = ({ sensor, mount, cable, input }: Combination): string => {
  const parts = [mount, cable, input].flatMap((part) => (part ? [part.name] : []));
  return parts.length === 0 ? sensor.name : `${sensor.name} (${parts.join(', ')})`;
};

/** "+3.2 dB", "−0.4 dB"; a dash where nothing is known or no limit is in reach. */
export const marginWords = (dB: number | undefined, language: Language = 'en'): string => {
  if (dB === undefined || !Number.isFinite(dB)) return '–';
  const rounded = Number(dB.toFixed(1));
  const sign = rounded > 0 ? '+' : rounded < 0 ? '−' : '';
  return localised(`${sign}${Math.abs(rounded).toFixed(1)} dB`, language);
};

export const massWords = (kg: number, language: Language): string =>
  localised(withUnit(kg, 'gram'), language).replace(/gram$/, GRAM[language]);
