import { isDigit, isSpace, plainText } from './characters';
import { LEADING, TRAILING, type Marks } from './mark-words';
import { numberAt } from './number';

const MOST_MARKS = 6;

const mayEnd = (text: string, suffix: string, how: 'glued' | 'apart' | 'mark'): boolean => {
  const before = text[text.length - suffix.length - 1];
  if (before === undefined) return false;
  if (how === 'mark') return true;
  if (how === 'glued') return !isDigit(before);
  // "5 min" is five minutes, "5 g min" a lower bound.
  return (isSpace(before) || before === '(') && !endsInNumber(text.slice(0, -suffix.length));
};
const endsInNumber = (text: string): boolean =>
  isDigit(text.trimEnd().at(-1)) && !text.includes('^') && text.length < 40;

/** "(±5 %)", "± 1 dB" behind a value; a tolerance in dB counts with its larger side, which is the upper. */
const takeTolerance = (text: string, marks: Marks): string => {
  const at = text.lastIndexOf('±');
  if (at <= 0) return text;
  const opened = text[at - 1] === '(';
  let i = at + 1;
  while (isSpace(text[i])) i++;
  const found = numberAt(text, i);
  if (!found || found.orThousands !== undefined) return text;
  let unit = text.slice(found.end).trim();
  if (opened && unit.endsWith(')')) unit = unit.slice(0, -1).trim();
  const before = text.slice(0, opened ? at - 1 : at).trimEnd();
  // "0.8 ±5 % kHz": the value's own unit, written last.
  const [, share = '', ofValue = ''] = /^(%|dB)\s+([^\d\s]\S*)$/.exec(unit) ?? [];
  if (share !== '' && !opened && isDigit(before.at(-1))) unit = share;
  if (unit !== '%' && unit !== 'dB') return text;
  marks.tolerance = unit === '%' ? found.value / 100 : 10 ** (found.value / 20) - 1;
  if (ofValue !== '') return `${before} ${ofValue}`;
  return before.endsWith(',') || before.endsWith(';') ? before.slice(0, -1) : before;
};

const unwrap = (text: string): string => {
  const close = text.at(-1);
  if (close !== ')' && close !== ']') return text;
  const open = text.lastIndexOf(close === ')' ? '(' : '[');
  const inside = text
    .slice(open + 1, -1)
    .trim()
    .toLowerCase();
  const known = TRAILING.some(([suffix, , how]) => how !== 'mark' && suffix === inside);
  return open > 0 && known ? `${text.slice(0, open).trimEnd()} ${inside}` : text;
};

const SIGNS = '*†‡#';
/**
 * A footnote mark behind a value: "12.5*", "12.5¹)", "20 1)", "0.8 (1)", "0.03 a)". A raised digit alone is one only where
 * it cannot be a power: "12.5²" stays open, and so does the digit in brackets of "0.8(1)", which may be an uncertainty.
 */
const footnoteAt = (text: string): number => {
  const last = text.at(-1) ?? '';
  if (SIGNS.includes(last)) return text.length - 1;
  if (text.endsWith('^1')) return text.length - 2;
  if (last !== ')') return -1;
  let at = text.length - 2;
  while (at > 0 && SIGNS.includes(text[at]!)) at--;
  if (at < text.length - 2) return at + 1;
  const isLetter = text[at]! >= 'a' && text[at]! <= 'f';
  if (isLetter) at--;
  else while (at > 0 && at > text.length - 4 && isDigit(text[at])) at--;
  if (at === text.length - 2) return -1;
  if (text[at] === '^' && !isLetter) return isDigit(text[at - 1]) || isSpace(text[at - 1]) ? at : -1;
  if (text[at] === '(') return isSpace(text[at - 1]) ? at : -1;
  return isSpace(text[at]) && !text.slice(0, at).includes('(') ? at + 1 : -1;
};
/** The text as typed without the footnote marks at its end. */
export const withoutFootnote = (text: string): string => {
  const at = footnoteAt(plainText(text));
  // Marks are few characters: what is left in plain spelling reads the same.
  return at > 0 ? withoutFootnote(plainText(text).slice(0, at).trimEnd()) : text;
};
const takeFootnote = (text: string, marks: Marks): string => {
  const at = footnoteAt(text);
  const before = at > 0 ? text.slice(0, at).trimEnd() : '';
  if (before === '') return text;
  marks.assumed.push('footnote mark left aside');
  return before;
};

const takeTrailing = (text: string, marks: Marks): string => {
  const unwrapped = unwrap(text);
  const low = unwrapped.slice(-16).toLowerCase();
  for (const [suffix, effect, how] of TRAILING) {
    if (!low.endsWith(suffix) || !mayEnd(unwrapped, suffix, how)) continue;
    effect(marks);
    let end = unwrapped.length - suffix.length;
    while (end > 0 && (isSpace(unwrapped[end - 1]) || (how !== 'mark' && '-_,'.includes(unwrapped[end - 1] ?? ' '))))
      end--;
    return unwrapped.slice(0, end);
  }
  return unwrapped;
};

const takeLeading = (text: string, marks: Marks): string => {
  const low = text.slice(0, 12).toLowerCase();
  for (const [prefix, effect] of LEADING) {
    if (!low.startsWith(prefix)) continue;
    effect(marks);
    return text.slice(prefix.length).trimStart();
  }
  return text;
};

/** Takes the marks off a plain text and leaves value and unit. */
export const takeMarks = (text: string): { bare: string; marks: Marks } => {
  const marks: Marks = { assumed: [] };
  let bare = text;
  for (let round = 0; round < MOST_MARKS; round++) {
    const before = bare;
    bare = takeLeading(takeTrailing(takeTolerance(takeFootnote(bare, marks), marks), marks), marks);
    if (bare === before) break;
  }
  return { bare, marks };
};
