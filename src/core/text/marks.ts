import type { Statistic } from '../issue';
import { isDigit, isSpace } from './characters';
import { numberAt } from './number';

/** What stands around a value: statistic, bound, tolerance, footnote marks, doubts. */
export interface Marks {
  statistic?: Statistic;
  bound?: 'at most' | 'at least';
  tolerance?: number;
  /** Two different statistics were written. */
  contradicts?: true;
  assumed: string[];
}
type Effect = (marks: Marks) => void;
const statistic =
  (value: Statistic): Effect =>
  (marks) => {
    if (marks.statistic !== undefined && marks.statistic !== value) marks.contradicts = true;
    marks.statistic = value;
  };
const bound =
  (value: 'at most' | 'at least'): Effect =>
  (marks) => {
    marks.bound = value;
    marks.assumed.push(`read as the bound itself (${value})`);
  };
const note =
  (text: string): Effect =>
  (marks) => {
    marks.assumed.push(text);
  };

const LEADING: readonly (readonly [string, Effect])[] = [
  ['≤', bound('at most')],
  ['<', bound('at most')],
  ['≥', bound('at least')],
  ['>', bound('at least')],
  ['up to ', bound('at most')],
  ['at most ', bound('at most')],
  ['at least ', bound('at least')],
  ['max. ', bound('at most')],
  ['max ', bound('at most')],
  ['min. ', bound('at least')],
  ['min ', bound('at least')],
  ['~', note('approximate')],
  ['approx. ', note('approximate')],
  ['approx ', note('approximate')],
  ['about ', note('approximate')],
  ['ca. ', note('approximate')],
  ['ca ', note('approximate')],
  ['typ. ', note('typical value')],
  ['typ ', note('typical value')],
  ['peak ', statistic('peak')],
  ['pk ', statistic('peak')],
  ['rms ', statistic('rms')],
];
/** Longest first, so that "pk-pk" is not taken for "pk". Glued: may follow a unit without a space, as in "Vpp". */
const TRAILING: readonly (readonly [string, Effect, 'glued' | 'apart' | 'mark'])[] = [
  ['peak-to-peak', statistic('peak-to-peak'), 'glued'],
  ['peak to peak', statistic('peak-to-peak'), 'glued'],
  ['zero-to-peak', statistic('peak'), 'glued'],
  ['peak-peak', statistic('peak-to-peak'), 'glued'],
  ['pk to pk', statistic('peak-to-peak'), 'glued'],
  ['0-peak', statistic('peak'), 'apart'],
  ['nominal', note('nominal value'), 'apart'],
  ['typical', note('typical value'), 'apart'],
  ['maximum', bound('at most'), 'apart'],
  ['minimum', bound('at least'), 'apart'],
  ['r.m.s.', statistic('rms'), 'glued'],
  ['r.m.s', statistic('rms'), 'glued'],
  ['pk-pk', statistic('peak-to-peak'), 'glued'],
  ['approx.', note('approximate'), 'apart'],
  ['0-pk', statistic('peak'), 'apart'],
  ['pkpk', statistic('peak-to-peak'), 'glued'],
  ['peak', statistic('peak'), 'glued'],
  ['typ.', note('typical value'), 'apart'],
  ['max.', bound('at most'), 'apart'],
  ['min.', bound('at least'), 'apart'],
  ['nom.', note('nominal value'), 'apart'],
  ['p-p', statistic('peak-to-peak'), 'glued'],
  ['0-p', statistic('peak'), 'apart'],
  ['rms', statistic('rms'), 'glued'],
  ['typ', note('typical value'), 'apart'],
  ['nom', note('nominal value'), 'apart'],
  ['max', bound('at most'), 'apart'],
  ['min', bound('at least'), 'apart'],
  ['pk', statistic('peak'), 'glued'],
  ['pp', statistic('peak-to-peak'), 'glued'],
  ['^1', () => undefined, 'mark'],
  ['*', () => undefined, 'mark'],
  ['†', () => undefined, 'mark'],
  ['‡', () => undefined, 'mark'],
  ['#', () => undefined, 'mark'],
  ['?', note('marked with a question mark'), 'mark'],
];
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
  if (unit !== '%' && unit !== 'dB') return text;
  marks.tolerance = unit === '%' ? found.value / 100 : 10 ** (found.value / 20) - 1;
  return text.slice(0, opened ? at - 1 : at).trimEnd();
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
