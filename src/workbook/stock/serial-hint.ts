import type { InLanguages, Language } from '../../core/language';
import { joinName } from '../../plan/join-name';
import type { Misread } from '../../plan/misread';
import type { PieceIndex } from '../../plan/pieces';

const WORDS: InLanguages<(serial: string, type: string) => string> = {
  en: (serial, type) => `“${serial}” is a serial number of “${type}”: name the type here, the number in a column of its own.`, // prettier-ignore
  de: (serial, type) => `„${serial}“ ist eine Seriennummer von „${type}“: hier den Typ nennen, die Nummer in einer eigenen Spalte.`, // prettier-ignore
  fr: (serial, type) => `« ${serial} » est un numéro de série de « ${type} » : nommer ici le type, le numéro dans une colonne à part.`, // prettier-ignore
};

/** Where a row names a piece whose number no formula finds, since it shares a cell with others: the type it is of. */
export const serialHint = ({ place, read }: Misread, pieces: PieceIndex, language: Language): string | undefined => {
  if (place.kind !== 'cell' || place.table !== 'channels' || place.key !== 'sensor') return undefined;
  const piece = pieces.find(read);
  return piece && joinName(read) !== '' ? WORDS[language](read, piece.type) : undefined;
};
