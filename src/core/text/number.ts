import { isDigit } from './characters';

export interface NumberFound {
  value: number;
  /** Where the text goes on. */
  end: number;
  /** Set when the only comma may mark decimals or thousands; `value` is then the decimal reading. */
  orThousands?: number;
}

const groupsOf = (text: string, at: number): { parts: string[]; marks: string[]; end: number } => {
  const parts: string[] = [];
  const marks: string[] = [];
  let i = at;
  for (;;) {
    const from = i;
    while (isDigit(text[i])) i++;
    parts.push(text.slice(from, i));
    const mark = text[i];
    const grouping = mark === ' ' || mark === "'";
    if (mark === undefined || !(grouping || mark === '.' || mark === ',')) break;
    if (!isDigit(text[i + 1])) break;
    if (grouping && !(isDigit(text[i + 2]) && isDigit(text[i + 3]) && !isDigit(text[i + 4]))) break;
    if (grouping && (parts.at(-1)?.length ?? 0) > 3) break;
    marks.push(mark);
    i++;
  }
  return { parts, marks, end: i };
};

const isThousands = (parts: readonly string[]): boolean => {
  const [first = '', ...rest] = parts;
  return first.length >= 1 && first.length <= 3 && !first.startsWith('0') && rest.every((part) => part.length === 3);
};

/** Where decimals begin among the groups, or undefined when the marks make no number. */
const decimalMarkAt = (
  parts: readonly string[],
  marks: readonly string[],
  decimal?: '.' | ',',
): { at: number; either?: true } | undefined => {
  const none = { at: marks.length };
  if (marks.length === 0) return none;
  const last = marks.at(-1);
  const lastOnly = marks.indexOf(last as string) === marks.length - 1;
  const before = marks.slice(0, -1);
  if (before.length > 0) {
    if (lastOnly && (last === '.' || last === ',')) {
      const sameMark = before.every((mark) => mark === before[0]);
      return sameMark && isThousands(parts.slice(0, -1)) ? { at: marks.length - 1 } : undefined;
    }
    return before.every((mark) => mark === last) && isThousands(parts) ? none : undefined;
  }
  if (last !== '.' && last !== ',') return isThousands(parts) ? none : undefined;
  if (!isThousands(parts) || decimal === last) return { at: 0 };
  if (decimal !== undefined) return none;
  return last === ',' ? { at: 0, either: true } : { at: 0 };
};

const exponentAt = (text: string, at: number): { power: number; end: number } | undefined => {
  let i = at;
  if (text[i] === 'e' || text[i] === 'E') {
    i++;
  } else if (text[i] === '^' && text.startsWith('10', i - 2) && !isDigit(text[i - 3]) && text[i - 3] !== '.') {
    const bare = exponentAt(`e${text.slice(i + 1, i + 6)}`, 0);
    return bare && { power: bare.power - 1, end: i + bare.end };
  } else {
    while (text[i] === ' ') i++;
    if (text[i] !== '*' && text[i] !== 'x') return undefined;
    i++;
    while (text[i] === ' ') i++;
    if (!text.startsWith('10^', i)) return undefined;
    i += 3;
  }
  const from = i;
  if (text[i] === '-' || text[i] === '+') i++;
  const digits = i;
  while (isDigit(text[i])) i++;
  return i > digits && i - digits <= 3 ? { power: Number(text.slice(from, i)), end: i } : undefined;
};

/** The unsigned number that starts at `at`; thousands may be marked by a space, an apostrophe, a point or a comma. */
export const numberAt = (text: string, at: number, decimal?: '.' | ','): NumberFound | undefined => {
  const leadingMark = (text[at] === '.' || text[at] === ',') && isDigit(text[at + 1]);
  if (!isDigit(text[at]) && !leadingMark) return undefined;
  const { parts, marks, end } = groupsOf(text, at);
  const point = decimalMarkAt(parts, marks, decimal);
  if (!point) return undefined;
  const whole = parts.slice(0, point.at + 1).join('') || '0';
  const fraction = parts.slice(point.at + 1).join('');
  const afterPoint = text[end] === '.' && text[end + 1] !== '.' && fraction === '' ? end + 1 : end;
  const exponent = exponentAt(text, afterPoint);
  const power = exponent ? `e${exponent.power}` : '';
  const value = Number(`${whole}.${fraction}${power}`.replace('.e', 'e'));
  if (!Number.isFinite(value)) return undefined;
  const found = { value, end: exponent?.end ?? afterPoint };
  return point.either ? { ...found, orThousands: Number(`${whole}${fraction}${power}`) } : found;
};
