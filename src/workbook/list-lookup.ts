import { isCellError, type Cell } from '../functions/define';

const NOT_FOUND: Cell = { error: '#N/A' };

/** Answers MATCH(wanted, list, 0) from an index: text whatever its case, with the wildcards that spreadsheets allow. */
export class ListLookup {
  private readonly lines = new Map<Cell, number>();
  private readonly texts: readonly (string | undefined)[];

  constructor(cells: readonly Cell[]) {
    this.texts = cells.map((cell) => (typeof cell === 'string' ? cell.toLowerCase() : undefined));
    cells.forEach((cell, i) => {
      const key = this.texts[i] ?? cell;
      if (key !== null && !isCellError(key) && !this.lines.has(key)) this.lines.set(key, i + 1);
    });
  }

  /** 1-based line of the first match, or an error value. */
  lineOf(wanted: Cell): Cell {
    if (wanted === null) return NOT_FOUND;
    if (isCellError(wanted)) return wanted;
    const key = typeof wanted === 'string' ? wanted.toLowerCase() : wanted;
    if (typeof key !== 'string' || !/[*?~]/.test(key)) return this.lines.get(key) ?? NOT_FOUND;
    const pattern = patternOf(key);
    const found = this.texts.findIndex((text) => text !== undefined && fits(pattern, text));
    return found < 0 ? NOT_FOUND : found + 1;
  }
}

const ANY = Symbol('any text');
const ONE = Symbol('any character');
type Piece = string | typeof ANY | typeof ONE;

/** `*` is any text, `?` any one character, `~` takes the next one for itself. */
const patternOf = (text: string): Piece[] => {
  const pieces: Piece[] = [];
  for (let i = 0; i < text.length; i++) {
    const character = text[i]!;
    if (character === '~' && /[*?~]/.test(text[i + 1] ?? '')) pieces.push(text[++i]!);
    else pieces.push(character === '*' ? ANY : character === '?' ? ONE : character);
  }
  return pieces;
};

/** Goes back only to the last `*`, so that no pattern takes more than length times length steps. */
const fits = (pattern: readonly Piece[], text: string): boolean => {
  let [p, t, star, resume] = [0, 0, -1, 0];
  while (t < text.length) {
    if (pattern[p] === ANY) [star, resume, p] = [p, t, p + 1];
    else if (p < pattern.length && (pattern[p] === ONE || pattern[p] === text[t])) [p, t] = [p + 1, t + 1];
    else if (star >= 0) [p, resume, t] = [star + 1, resume + 1, resume + 1];
    else return false;
  }
  while (pattern[p] === ANY) p += 1;
  return p === pattern.length;
};
