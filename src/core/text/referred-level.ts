import type { Read } from '../issue';
import { read, unread } from '../issue';
import { UNITS, type UnitId } from '../units';
import { isDigit, isLetter, isSpace } from './characters';
import type { QuantityReading, ReadingOptions } from './quantity';
import { scaleValue, splitValue } from './value';

const LINKS = ['re:', 're.', 'ref.', 'ref', 'rel.', 'rel', 're'];
const AMPLITUDES = new Set<string>(['acceleration', 'velocity', 'force', 'voltage', 'length']);

const linkAfterDecibel = (text: string): { level: string; reference: string } | undefined => {
  const at = text.toLowerCase().indexOf('db');
  if (at <= 0 || isLetter(text[at - 1])) return undefined;
  let i = at + 2;
  while (isSpace(text[i]) || text[i] === '(') i++;
  const link = LINKS.find((word) => text.startsWith(word, i));
  const after = link && text[i + link.length];
  if (!link || !(isSpace(after) || isDigit(after))) return undefined;
  const reference = text.slice(i + link.length).trim();
  const closes = reference.endsWith(')') && !reference.includes('(');
  return { level: text.slice(0, at).trim(), reference: closes ? reference.slice(0, -1).trim() : reference };
};

export const isReferredLevel = (text: string): boolean => linkAfterDecibel(text) !== undefined;

/** "60 dB re 1e-6 m/s²" as an amplitude: reference × 10^(L/20). Levels of this kind are r.m.s. (ISO 1683, from memory). */
export const readReferredLevel = (
  text: string,
  unit: UnitId,
  given: string,
  options: ReadingOptions,
): Read<QuantityReading> => {
  const { label, quantity } = UNITS[unit];
  const split = linkAfterDecibel(text);
  const level = split && splitValue(split.level, options.decimal);
  const reference = split && (splitValue(split.reference, options.decimal) ?? splitValue(`1 ${split.reference}`));
  if (!level || level.unitText !== '' || !reference) return unread({ code: 'not-a-number', given, unit: label });
  if (!AMPLITUDES.has(quantity)) return unread({ code: 'wrong-unit', given, unit: label });
  if (reference.unitText === '') {
    return unread({
      code: 'ambiguous',
      given,
      readings: [`re ${reference.value} ${label}`, `re ${reference.value} in SI units`],
    });
  }
  const one = scaleValue(reference.value, reference.unitText, unit, given);
  if (!one.ok) return unread(one.problem);
  const si = one.si * 10 ** (level.value / 20);
  if (!(one.si > 0) || !Number.isFinite(si)) return unread({ code: 'not-a-number', given, unit: label });
  return read({
    si,
    statistic: 'rms',
    unitText: text.slice(text.toLowerCase().indexOf('db')),
    assumed: ['a level in dB is r.m.s.'],
  });
};
