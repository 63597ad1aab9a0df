/** The power of ten by which a double still divides exactly rounded, and the digits it holds exactly. */
const LARGEST_POWER = 22;
const EXACT_DIGITS = 15;
const POWERS = Array.from({ length: LARGEST_POWER + 1 }, (_, n) => Number(`1e${n}`));

/** A plain decimal number of up to 15 digits, read without making a string of it; NaN for every other form. */
export function shortNumber(bytes: Uint8Array, from: number, to: number): number {
  const first = bytes[from] === 45 ? from + 1 : from;
  if (to - first > EXACT_DIGITS + 1 || to === first) return NaN;
  let digits = 0;
  let point = -1;
  for (let at = first; at < to; at++) {
    const byte = bytes[at]!;
    if (byte === 46 && point < 0 && at > first) point = at;
    else if (byte >= 48 && byte <= 57) digits = digits * 10 + byte - 48;
    else return NaN;
  }
  if (point < 0 && to - first > EXACT_DIGITS) return NaN;
  const size = point < 0 ? digits : digits / POWERS[to - point - 1]!;
  return first === from ? size : -size;
}

/** A small whole number, 0 when it is none. */
export function smallNumber(bytes: Uint8Array, from: number, to: number): number {
  let n = 0;
  for (let at = from; at < to; at++) {
    const digit = bytes[at]! - 48;
    if (digit < 0 || digit > 9) return 0;
    n = n * 10 + digit;
  }
  return n;
}
