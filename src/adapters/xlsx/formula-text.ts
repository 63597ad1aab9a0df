import type { RangeAddress } from '../../workbook/port';
import { columnLetters } from '../../workbook/address';
import { columnNumber, parseRange } from './cell-reference';
import { LAST_COLUMN, LAST_ROW } from './limits';

export type TokenKind = 'text' | 'quoted' | 'bracket' | 'error' | 'columns' | 'rows' | 'word' | 'space' | 'other';
export interface FormulaToken {
  readonly kind: TokenKind;
  readonly text: string;
}

/** Longer texts are no formulas of any spreadsheet and are left alone. */
const LONGEST = 65_536;
/** Each alternative also matches when its end is missing, so that no text can make the search start over and over. */
const PATTERNS: readonly [TokenKind, RegExp][] = [
  ['text', /"(?:[^"]|"")*(?:"|$)/y],
  ['quoted', /'(?:[^']|'')*(?:'|$)/y],
  ['bracket', /\[(?:[^[\]']|'(?:[^]|$)|\[(?:[^[\]']|'(?:[^]|$))*(?:\]|$))*(?:\]|$)/y],
  ['error', /#(?:NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|N\/A)/iy],
  ['columns', /\$?[A-Za-z]{1,3}:\$?[A-Za-z]{1,3}(?![\w.$(!])/y],
  ['rows', /\$?\d{1,7}:\$?\d{1,7}(?![\w.$])/y],
  ['word', /[\p{L}_\\$][\p{L}\p{N}_\\$.?]*|\d[\w.]*/uy],
  ['space', /\s+/y],
  ['other', /[^]/y],
];

export function tokenize(formula: string): FormulaToken[] {
  if (formula.length > LONGEST) return [{ kind: 'other', text: formula }];
  const tokens: FormulaToken[] = [];
  for (let at = 0; at < formula.length;) {
    for (const [kind, pattern] of PATTERNS) {
      pattern.lastIndex = at;
      const text = pattern.exec(formula)?.[0];
      if (text === undefined) continue;
      tokens.push({ kind, text });
      at += text.length;
      break;
    }
  }
  return tokens;
}

const CELL = /^(\$?)([A-Za-z]{1,3})(\$?)(\d{1,7})$/;

/** A word that names a cell, unless it is called like a function or names a sheet. */
function cellAt(tokens: readonly FormulaToken[], n: number): RegExpExecArray | null {
  const token = tokens[n]!;
  const next = tokens[n + 1]?.text;
  if (token.kind !== 'word' || next === '(' || next === '!') return null;
  const found = CELL.exec(token.text);
  if (!found || columnNumber(found[2]!) < 0) return null;
  const row = Number(found[4]);
  return row >= 1 && row <= LAST_ROW + 1 ? found : null;
}

/** The formula as it reads when it is copied so many rows down and columns right: relative references move along. */
export function shiftFormula(formula: string, rows: number, columns: number): string {
  const moved = (fixed: string, at: number, by: number, last: number): number => {
    const to = fixed === '$' ? at : at + by;
    return to < 0 || to > last ? NaN : to;
  };
  const column = (fixed: string, letters: string): string => {
    const to = moved(fixed, columnNumber(letters), columns, LAST_COLUMN);
    return Number.isNaN(to) ? '' : fixed + columnLetters(to);
  };
  const row = (fixed: string, digits: string): string => {
    const to = moved(fixed, Number(digits) - 1, rows, LAST_ROW);
    return Number.isNaN(to) ? '' : `${fixed}${to + 1}`;
  };
  const tokens = tokenize(formula);
  return tokens
    .map(({ kind, text }, n) => {
      if (kind === 'columns' || kind === 'rows') {
        const ends = text.split(':').map((end) => {
          const fixed = end.startsWith('$') ? '$' : '';
          return (kind === 'columns' ? column : row)(fixed, end.slice(fixed.length));
        });
        return ends.includes('') ? '#REF!' : ends.join(':');
      }
      const found = cellAt(tokens, n);
      if (!found) return text;
      const c = column(found[1]!, found[2]!);
      const r = row(found[3]!, found[4]!);
      return c === '' || r === '' ? '#REF!' : c + r;
    })
    .join('');
}

export interface Reference {
  /** Undefined on the formula's own sheet; undefined too for a reference into another workbook, which is left out. */
  readonly sheet: string | undefined;
  readonly range: RangeAddress;
}

/** All cells and ranges that a formula names outright. */
export function referencesIn(formula: string): Reference[] {
  const tokens = tokenize(formula);
  const found: Reference[] = [];
  for (let n = 0; n < tokens.length; n++) {
    const range = rangeAt(tokens, n);
    if (!range) continue;
    const sheet = sheetBefore(tokens, n);
    if (sheet !== null) found.push({ sheet, range: range.range });
    n += range.length - 1;
  }
  return found;
}

function rangeAt(tokens: readonly FormulaToken[], n: number): { range: RangeAddress; length: number } | undefined {
  const { kind, text } = tokens[n]!;
  if (kind === 'columns' || kind === 'rows') {
    const [a = '', b = ''] = text.replaceAll('$', '').split(':');
    const range =
      kind === 'columns'
        ? parseRange(`${a}1:${b}${LAST_ROW + 1}`)
        : parseRange(`A${a}:${columnLetters(LAST_COLUMN)}${b}`);
    return range && { range, length: 1 };
  }
  if (!cellAt(tokens, n)) return undefined;
  const two = tokens[n + 1]?.text === ':' && tokens[n + 2] !== undefined && cellAt(tokens, n + 2) !== null;
  const range = parseRange(two ? `${text}:${tokens[n + 2]!.text}` : text);
  return range && { range, length: two ? 3 : 1 };
}

/** The sheet named before a reference; null when it lies in another workbook. */
function sheetBefore(tokens: readonly FormulaToken[], n: number): string | undefined | null {
  if (tokens[n - 1]?.text !== '!') return undefined;
  const name = tokens[n - 2];
  if (!name || tokens[n - 3]?.kind === 'bracket') return null;
  if (name.kind === 'quoted') {
    const plain = name.text.slice(1, -1).replaceAll("''", "'");
    return plain.includes('[') ? null : plain;
  }
  return name.kind === 'word' ? name.text : null;
}
