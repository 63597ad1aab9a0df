/** Who a file says wrote our notes. A program that runs us names its user instead, so there the text says it. */
export const NOTE_AUTHOR = 'Channelwright';
const HEAD = `${NOTE_AUTHOR}:\n`;

/** A note's text with the line that says whose it is, as spreadsheet programs write it. */
export const signedNote = (text: string): string => HEAD + text;

export const isOwnNote = ({ author, text }: { readonly author?: string; readonly text: string }): boolean =>
  author === NOTE_AUTHOR || text.replaceAll('\r\n', '\n').startsWith(HEAD);

/** A note of a person. */
export interface CellNote {
  readonly row: number;
  readonly column: number;
  readonly text: string;
}
