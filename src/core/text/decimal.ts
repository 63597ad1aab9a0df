import { isDigit, LONGEST_TEXT, plainText } from './characters';
import { numberAt } from './number';

const STARTS = '+-±≤≥<>~.,';

/** What one text says about the decimal mark; texts such as "1,250" and "1.250" say nothing. */
const evidence = (text: string): '.' | ',' | undefined => {
  const plain = plainText(text);
  let at = 0;
  while (STARTS.includes(plain[at] ?? ' ') && !isDigit(plain[at])) at++;
  const found = numberAt(plain, at);
  if (!found || found.orThousands !== undefined) return undefined;
  const written = plain.slice(at, found.end);
  const [comma, point] = [written.lastIndexOf(','), written.lastIndexOf('.')];
  if (comma >= 0 && point >= 0) return comma > point ? ',' : '.';
  if (comma >= 0) return written.indexOf(',') === comma ? ',' : '.';
  if (point < 0) return undefined;
  if (written.indexOf('.') !== point) return ',';
  return numberAt(plain, at, ',')?.value === found.value ? '.' : undefined;
};

/** The decimal mark of a list, when some texts show it and none shows the other. */
export const guessDecimal = (cells: Iterable<unknown>): '.' | ',' | undefined => {
  let guess: '.' | ',' | undefined;
  for (const cell of cells) {
    if (typeof cell !== 'string' || cell.length > LONGEST_TEXT) continue;
    const mark = evidence(cell);
    if (mark === undefined) continue;
    if (guess !== undefined && guess !== mark) return undefined;
    guess = mark;
  }
  return guess;
};
