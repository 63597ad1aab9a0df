import { isDigit } from './characters';

/** Where the bracket closed by the last character opens. */
const openingOf = (text: string): number => {
  let depth = 0;
  for (let i = text.length - 1; i >= 0; i--) {
    if (text[i] === ')') depth++;
    else if (text[i] === '(' && --depth === 0) return i;
  }
  return -1;
};

/** "0.8 gram (0.028 oz)": a value and the same value again in another unit. */
export const splitEcho = (plain: string): { value: string; echo: string } | undefined => {
  if (!plain.endsWith(')')) return undefined;
  const open = openingOf(plain);
  if (open <= 0 || plain[open - 1] !== ' ') return undefined;
  const echo = plain.slice(open + 1, -1).trim();
  if (echo.toLowerCase().startsWith('0-p')) return undefined; // "(0-pk)" is a statistic
  const first = '+-±'.includes(echo[0] ?? ' ') ? echo[1] : echo[0];
  return isDigit(first) || first === '.' ? { value: plain.slice(0, open).trim(), echo } : undefined;
};

/** "(−40…+85) °C" and "(100 ± 10) mV/g" without the brackets. */
export const unbracketed = (plain: string): string => {
  if (plain[0] !== '(') return plain;
  const close = plain.indexOf(')');
  return close > 0 && !plain.slice(1, close).includes('(')
    ? `${plain.slice(1, close).trim()} ${plain.slice(close + 1).trim()}`.trim()
    : plain;
};

/** An echo is rounded to what fits a data sheet. */
const ROUNDED = 0.02;
export const echoes = (a: readonly number[], b: readonly number[]): boolean => {
  const scale = Math.max(...a.map(Math.abs));
  return a.every((value, i) => Math.abs(value - (b[i] ?? Number.NaN)) <= ROUNDED * scale);
};
