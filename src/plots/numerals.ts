import type { InLanguages, Language } from '../core/language';
import type { UnitId } from '../core/units';
import { acceleration as accelerationInWords, inWords, signed as signedInWords } from '../plan/numbers-in-words';

const DECIMAL: InLanguages<string> = { en: '.', de: ',', fr: ',' };
const localised = (text: string, language: Language): string => text.replace('.', DECIMAL[language]);

export const acceleration = (si: number, language: Language): string => localised(accelerationInWords(si), language);
export const quantity = (si: number, unit: UnitId, language: Language, digits = 3): string =>
  localised(inWords(si, unit, digits), language);
export const signed = (si: number, unit: UnitId, language: Language): string =>
  localised(signedInWords(si, unit), language);

export const decibels = (value: number | undefined, language: Language): string | undefined =>
  value === undefined ? undefined : `${localised(value.toFixed(1).replace('-', '−'), language)} dB`;

/** A tick: plain where that is short, a power of ten otherwise. */
export const tick = (value: number, language: Language): string => {
  const exponent = Math.log10(Math.abs(value));
  const text =
    value !== 0 && (exponent < -3 || exponent >= 5)
      ? `10${superscript(Math.round(exponent))}`
      : String(Number(value.toPrecision(6)));
  return localised(text.replace('-', '−'), language);
};
const SUPERSCRIPT: Readonly<Record<string, string>> = {
  '-': '⁻',
  '0': '⁰',
  '1': '¹',
  '2': '²',
  '3': '³',
  '4': '⁴',
  '5': '⁵',
  '6': '⁶',
  '7': '⁷',
  '8': '⁸',
  '9': '⁹', // prettier-ignore
};
const superscript = (exponent: number): string => [...String(exponent)].map((digit) => SUPERSCRIPT[digit]).join('');
