import { sheetPrefix } from '../../workbook/address';
import { tokenize, type FormulaToken } from './formula-text';

/** The new name of a sheet, or undefined where it keeps its own. */
export type Renaming = (name: string) => string | undefined;

const plainName = ({ kind, text }: FormulaToken): string =>
  kind === 'quoted' ? text.slice(1, -1).replaceAll("''", "'") : text;

/** One sheet, or the first and last of several: 'June:August'!A1. A name cannot hold a colon. */
const renamedSpan = (names: readonly string[], newName: Renaming): string | undefined => {
  if (names.every((name) => newName(name) === undefined)) return undefined;
  const after = names.map((name) => newName(name) ?? name);
  const isPlain = after.every((name) => sheetPrefix(name) === `${name}!`);
  return isPlain ? after.join(':') : `'${after.map((name) => name.replaceAll("'", "''")).join(':')}'`;
};

/** The formula with the new names of sheets; texts in it, and sheets of other workbooks, stay as they are. */
export const renamedFormula = (formula: string, newName: Renaming): string => {
  if (!formula.includes('!')) return formula;
  const tokens = tokenize(formula);
  const out = tokens.map(({ text }) => text);
  tokens.forEach((token, n) => {
    if (tokens[n + 1]?.text !== '!' || (token.kind !== 'quoted' && token.kind !== 'word')) return;
    const isSpan = token.kind === 'word' && tokens[n - 1]?.text === ':' && tokens[n - 2]?.kind === 'word';
    const first = isSpan ? n - 2 : n;
    const names = isSpan ? [plainName(tokens[first]!), plainName(token)] : plainName(token).split(':');
    // [1]Sheet!A1 and '[Other.xlsx]Sheet'!A1 lie elsewhere.
    if (tokens[first - 1]?.kind === 'bracket' || names[0]!.includes('[')) return;
    const renamed = renamedSpan(names, newName);
    if (renamed === undefined) return;
    for (let k = first; k < n; k++) out[k] = '';
    out[n] = renamed;
  });
  return out.join('');
};
