import { inEach, type InLanguages } from '../core/language';
import { cellAddress } from './address';
import { HostProblem } from './port';

/** Who a file says wrote our notes. A program that runs us names its user instead, so there the text says it. */
export const NOTE_AUTHOR = 'Channelwright';
const HEAD = `${NOTE_AUTHOR}:\n`;

/** A note's text with the line that says whose it is, as spreadsheet programs write it. */
export const signedNote = (text: string): string => HEAD + text;

/** The text under that line. */
export const unsignedNote = (text: string): string => text.replace(/^Channelwright:\r?\n/, '');

export const isOwnNote = ({ author, text }: { readonly author?: string; readonly text: string }): boolean =>
  author === NOTE_AUTHOR || text.replaceAll('\r\n', '\n').startsWith(HEAD);

/** A note of a person. */
export interface CellNote {
  readonly row: number;
  readonly column: number;
  readonly text: string;
}

const IN_THE_WAY: InLanguages<(cell: string, sheet: string) => string> = {
  en: (cell, sheet) =>
    `Cell ${cell} of sheet “${sheet}” has somebody's note; ours would replace it. Move that note, then try again. Nothing was changed.`,
  de: (cell, sheet) =>
    `An Zelle ${cell} des Blatts „${sheet}“ hängt eine fremde Notiz; unsere würde sie ersetzen. Verschieben Sie diese Notiz und versuchen Sie es noch einmal. Es wurde nichts geändert.`,
  fr: (cell, sheet) =>
    `La cellule ${cell} de la feuille « ${sheet} » porte la note de quelqu’un ; la nôtre la remplacerait. Déplacez cette note, puis réessayez. Rien n’a été modifié.`,
};

/** A note of somebody else's stands where ours would go. */
export const noteInTheWay = (sheet: string, row: number, column: number): HostProblem =>
  new HostProblem(
    inEach(IN_THE_WAY, (say) => say(cellAddress(row, column), sheet)),
    'occupied',
  );
