import type { Problem } from '../core/issue';
import { dateFromText } from './json-date';

const MONTHS: readonly (readonly string[])[] = [
  ['jan', 'ene', 'gen'],
  ['feb', 'fev'],
  ['mar', 'mrz', 'maerz'],
  ['apr', 'avr', 'abr'],
  ['may', 'mai', 'mag'],
  ['jun', 'juin', 'giu'],
  ['jul', 'juil', 'lug'],
  ['aug', 'aou', 'ago'],
  ['sep', 'set'],
  ['oct', 'okt', 'ott'],
  ['nov'],
  ['dec', 'dez', 'dic'],
];
/** The month that a word begins, in English, German, French, Spanish or Italian. */
const monthOf = (word: string): number | undefined => {
  const plain = word.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();
  const at = MONTHS.findIndex((starts) => starts.some((start) => plain.startsWith(start)));
  return at < 0 ? undefined : at + 1;
};

const two = (part: number): string => String(part).padStart(2, '0');
const serial = (year: string, month: number, day: number): number | undefined =>
  dateFromText(`${year}-${two(month)}-${two(day)}`);

export type DateReading =
  { readonly ok: true; readonly serial: number } | { readonly ok: false; readonly problem?: Problem };
const dated = (found: number | undefined): DateReading =>
  found === undefined ? { ok: false } : { ok: true, serial: found };

/**
 * A date as people write it: 2026-11-30, 2026/11/30, 30.11.2026, 30 Nov 2026, Nov 30, 2026. Points stand behind the day
 * first everywhere; with slashes or dashes the order is a question unless one number can be no month.
 */
export const readDateText = (text: string): DateReading => {
  const plain = text.trim();
  const yearFirst = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})$/.exec(plain);
  if (yearFirst) return dated(serial(yearFirst[1]!, Number(yearFirst[2]), Number(yearFirst[3])));
  const numbers = /^(\d{1,2})([-/.])(\d{1,2})\2(\d{4})$/.exec(plain);
  if (numbers) {
    const [first, second, year] = [Number(numbers[1]), Number(numbers[3]), numbers[4]!];
    if (numbers[2] === '.' || first === second || first > 12) return dated(serial(year, second, first));
    if (second > 12) return dated(serial(year, first, second));
    const readings = [`${year}-${two(second)}-${two(first)}`, `${year}-${two(first)}-${two(second)}`] as const;
    return { ok: false, problem: { code: 'ambiguous', given: plain, readings } };
  }
  const named =
    /^(?:(\d{1,2})\.?[\s-]+(?:de\s+)?(\p{L}{3,10})|(\p{L}{3,10})\.?\s+(\d{1,2}))(?:\.?,?[\s-]+(?:de\s+)?)(\d{4})$/u.exec(
      plain,
    );
  const month = named && monthOf(named[2] ?? named[3]!);
  return month ? dated(serial(named[5]!, month, Number(named[1] ?? named[4]))) : { ok: false };
};
