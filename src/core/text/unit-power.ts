import { isDigit } from './characters';

/** Higher powers than this are a slip of the pen. */
const HIGHEST = 6;

/** The power behind a unit: "^-2", "^(1/2)", "^0.5", or bare digits as in "s-2"; 1 when there is none. Undefined: no power can be meant. */
export const powerAt = (text: string, start: number): { power: number; end: number } | undefined => {
  let at = start;
  while (text[at] === '^') at++;
  const raised = at > start;
  const bracket = raised && text[at] === '(';
  if (bracket) at++;
  const sign = text[at] === '-' ? -1 : 1;
  if (text[at] === '-' || text[at] === '+') at++;
  const from = at;
  while (isDigit(text[at]) || (raised && text[at] === '.')) at++;
  if (at === from) return raised ? undefined : { power: 1, end: start };
  let size = Number(text.slice(from, at));
  if (raised && text[at] === '/' && isDigit(text[at + 1])) {
    size /= Number(text[at + 1]);
    at += 2;
  }
  if (bracket && text[at++] !== ')') return undefined;
  return size > 0 && size <= HIGHEST ? { power: sign * size, end: at } : undefined;
};
