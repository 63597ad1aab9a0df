import { isDigit, LONGEST_TEXT, plainText } from './characters';
import { numberAt } from './number';

const STARTS = '+-±≤≥<>~.,';

const startOf = (text: string): [plain: string, at: number] => {
  const plain = plainText(text);
  let at = 0;
  while (STARTS.includes(plain[at] ?? ' ') && !isDigit(plain[at])) at++;
  return [plain, at];
};

/** What one text says about the decimal mark; texts such as "1,250" and "1.250" say nothing. */
const evidence = (text: string): '.' | ',' | undefined => {
  const [plain, at] = startOf(text);
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

/** Some text shows that decimals are written with a comma. */
export const showsDecimalComma = (cells: Iterable<unknown>): boolean => {
  for (const cell of cells)
    if (typeof cell === 'string' && cell.length <= LONGEST_TEXT && cell.includes(',') && evidence(cell) === ',')
      return true;
  return false;
};

/** "1.500" is one and a half with a decimal point, and fifteen hundred where decimals have a comma. */
export const isOtherWithComma = (text: string): boolean => {
  if (text.length > LONGEST_TEXT || !text.includes('.')) return false;
  const [plain, at] = startOf(text);
  const [point, comma] = [numberAt(plain, at), numberAt(plain, at, ',')];
  return point !== undefined && comma !== undefined && point.value !== comma.value;
};
