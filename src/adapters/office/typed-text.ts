import { HostProblem, type Change } from '../../workbook/port';
import { cellAddress } from '../../workbook/address';

export type Entry = number | string | boolean | null;

/** Excel specifications and limits: a cell's text and a formula. */
const LONGEST_TEXT = 32767;
const LONGEST_FORMULA = 8192;
/** No number, date or time that Excel would recognise in a text is longer. */
const LONGEST_LOOKALIKE = 40;

/**
 * Excel reads a text that it is given as if it had been typed: "1/2" becomes a date, "-5" a number, "@a" a formula.
 * A leading apostrophe keeps such a text as it is; it is not part of the cell's value.
 */
const needsApostrophe = (text: string): boolean =>
  /^\P{L}/u.test(text) || /^(true|false)$/i.test(text) || (text.length <= LONGEST_LOOKALIKE && /\d/.test(text));

/** The entry as Office.js takes it. Its own null means "leave alone", ours means "clear". */
export const typed = (entry: Entry): number | string | boolean => {
  if (entry === null || entry === '') return '';
  if (typeof entry !== 'string' || entry.startsWith('=')) return entry;
  return needsApostrophe(entry) ? `'${entry}` : entry;
};

/** Refuses what Excel would refuse half-way, before anything is written. */
export const refuseTooLong = (change: Extract<Change, { kind: 'cells' }>): void => {
  change.cells.forEach((row, i) =>
    row.forEach((entry, k) => {
      if (typeof entry !== 'string') return;
      const limit = entry.startsWith('=') ? LONGEST_FORMULA : LONGEST_TEXT;
      if (entry.length <= limit) return;
      const at = cellAddress(change.row + i, change.column + k);
      const what = limit === LONGEST_FORMULA ? 'formula' : 'text';
      throw new HostProblem(
        `The ${what} for ${change.sheet} ${at} has ${entry.length} characters; a cell takes ${limit}. Nothing was changed.`,
        'too-large',
      );
    }),
  );
};
