import { markedIn } from '../../core/language';

export interface CsvForm {
  /** Between fields. */
  readonly separator: ',' | ';' | '\t';
  readonly decimal: '.' | ',';
}

/**
 * Texts that a spreadsheet program takes for a formula or a command when it opens a CSV file: they begin with = + - @, in
 * the narrow or the wide form, or with a tab or line end, whatever blanks stand before. A text that begins with an
 * apostrophe is treated alike, so that taking one apostrophe away gives every text back.
 */
const ACTIVE = /^(?:[\t\r\n]|[\s\ufeff]*['=+\-@\uff1d\uff0b\uff0d\uff20])/;

/** The text as it may stand in a CSV file: what could become active gets an apostrophe in front. */
export const guarded = (text: string): string => (ACTIVE.test(text) ? `'${text}` : text);

const quoted = (text: string, { separator }: CsvForm): string =>
  text.includes(separator) || /["\r\n]/.test(text) || text !== text.trim() ? `"${text.replaceAll('"', '""')}"` : text;

/** Numbers stay numbers, with all their digits; texts are guarded. */
const cellText = (cell: string | number | null, form: CsvForm): string => {
  if (cell === null) return '';
  if (typeof cell === 'number') return quoted(markedIn(String(cell), form.decimal === ',' ? 'de' : 'en'), form);
  // A NUL ends the text for many readers.
  return quoted(guarded(cell.replaceAll('\u0000', '')), form);
};

/** RFC 4180: lines end in CR LF, the last one as well; a field is quoted where it must be. */
export const csvText = (lines: readonly (readonly (string | number | null)[])[], form: CsvForm): string =>
  lines.map((line) => `${line.map((cell) => cellText(cell, form)).join(form.separator)}\r\n`).join('');
