import { isDigit, isSpace } from './characters';
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
    bare = takeLeading(takeTrailing(takeTolerance(bare, marks), marks), marks);
    if (bare === before) break;
  }
  return { bare, marks };
};
