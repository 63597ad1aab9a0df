import { isCellError, type Cell } from '../../functions/define';

/** Programs write doubles with 15 to 17 digits. */
const ALIKE = 1e-12;
const plainText = (text: string): string => text.normalize('NFC').replace(/\s+/g, ' ').trim();
const numberOf = (cell: Cell): number | undefined => {
  if (typeof cell === 'number') return cell;
  return typeof cell === 'string' && /^\s*-?\d+(?:\.\d+)?(?:[eE][+-]?\d+)?\s*$/.test(cell) ? Number(cell) : undefined;
};

/** True when two programs may have stored the same typed thing in these ways. */
export const isSameCell = (a: Cell | undefined, b: Cell | undefined): boolean => {
  if (isCellError(a) || isCellError(b)) return isCellError(a) && isCellError(b) && a.error === b.error;
  const [one, other] = [a ?? '', b ?? ''];
  const [x, y] = [numberOf(one), numberOf(other)];
  if (x !== undefined && y !== undefined)
    return x === y || Math.abs(x - y) <= ALIKE * Math.max(Math.abs(x), Math.abs(y));
  return plainText(String(one)) === plainText(String(other));
};
