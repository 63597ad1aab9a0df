import { FUNCTIONS, NAMESPACE } from '../../../functions/index';

/** A file stores CHAN.MASS.RATIO( as _xldudf_CHAN_MASS_RATIO(. */
const STORED_NAME = /_xldudf_([A-Za-z0-9_]+)(?=\s*\()/g;
const STORED_PREFIX = /_xl(?:fn|ws|pm|udf)\./g;
/** Text in quotes, quoted sheet names, and everything between. */
const PIECES = /"(?:[^"]|"")*"|'(?:[^']|'')*'|[^"']+/g;

const known = new Map<string, string>();
const typedName = (stored: string): string => {
  if (known.size === 0)
    FUNCTIONS.forEach(({ name }) => known.set(`${NAMESPACE}.${name}`.replaceAll('.', '_'), `${NAMESPACE}.${name}`));
  return known.get(stored.toUpperCase()) ?? stored.replaceAll('_', '.');
};

/** The formula as a person types it: our names with dots, no storage prefixes; quoted text is left alone. */
export const formulaFromFile = (stored: string): string =>
  '=' +
  stored.replace(PIECES, (piece) =>
    piece.startsWith('"') || piece.startsWith("'")
      ? piece
      : piece.replace(STORED_NAME, (_, name: string) => typedName(name)).replace(STORED_PREFIX, ''),
  );

const TOKENS =
  /"(?:[^"]|"")*"|'(?:[^']|'')*'!?|\[[^\]]*\]|(\$?)([A-Za-z]{1,3})(\$?)([0-9]{1,7})(?![A-Za-z0-9_.(![])|[A-Za-z_\\.$][A-Za-z0-9_.\\$]*!?|[^"'[A-Za-z_\\.$]+/g;
/** Whole rows and columns ("A:C", "2:2") do not shift by the rule below. */
const WHOLE_LINES = /\$?[A-Za-z]{1,3}:\$?[A-Za-z]{1,3}(?![0-9A-Za-z])|\$?[0-9]+:\$?[0-9]+/;

const columnNumber = (letters: string): number =>
  [...letters.toUpperCase()].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);

/**
 * The formula with its relative references as offsets from its own cell: equal texts mean the same formula moved.
 * Undefined where moving is not plain shifting.
 */
export const relativeForm = (formula: string, row: number, column: number): string | undefined => {
  if (WHOLE_LINES.test(formula.replace(/"(?:[^"]|"")*"/g, ''))) return undefined;
  return formula.replace(
    TOKENS,
    (token: string, fixedColumn?: string, letters?: string, fixedRow?: string, digits?: string) => {
      if (!letters || !digits) return token;
      const c = columnNumber(letters);
      const r = Number(digits);
      return `\u0001${fixedRow ? r : `[${r - row}]`},${fixedColumn ? c : `[${c - column}]`}\u0002`;
    },
  );
};
