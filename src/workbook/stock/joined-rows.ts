import type { InLanguages, Language } from '../../core/language';
import type { Join } from '../../plan/from-tables';

interface JoinedWords {
  readonly sensor: (rows: number, serial: string, type: string) => string;
  readonly serial: (rows: number, serial: string, type: string) => string;
}
const WORDS: InLanguages<JoinedWords> = {
  en: {
    sensor: (rows, serial, type) =>
      `${rows === 1 ? '1 row names' : `${rows} rows name`} a serial number in place of a sensor type and ${rows === 1 ? 'is' : 'are'} read with the type of that piece: “${serial}” is a “${type}”.`,
    serial: (rows, serial, type) =>
      `${rows === 1 ? '1 row names' : `${rows} rows name`} no sensor type but a serial number and ${rows === 1 ? 'is' : 'are'} read with the type of that piece: “${serial}” is a “${type}”.`,
  },
  de: {
    sensor: (rows, serial, type) =>
      `${rows === 1 ? '1 Zeile nennt' : `${rows} Zeilen nennen`} statt des Aufnehmertyps eine Seriennummer und ${rows === 1 ? 'gilt' : 'gelten'} mit dem Typ dieses Stücks: „${serial}“ ist ein „${type}“.`,
    serial: (rows, serial, type) =>
      `${rows === 1 ? '1 Zeile nennt' : `${rows} Zeilen nennen`} keinen Aufnehmertyp, aber eine Seriennummer, und ${rows === 1 ? 'gilt' : 'gelten'} mit dem Typ dieses Stücks: „${serial}“ ist ein „${type}“.`,
  },
  fr: {
    sensor: (rows, serial, type) =>
      `${rows === 1 ? '1 ligne nomme' : `${rows} lignes nomment`} un numéro de série à la place du type de capteur et ${rows === 1 ? 'est lue' : 'sont lues'} avec le type de cet exemplaire : « ${serial} » est un « ${type} ».`,
    serial: (rows, serial, type) =>
      `${rows === 1 ? '1 ligne ne nomme' : `${rows} lignes ne nomment`} aucun type de capteur mais un numéro de série et ${rows === 1 ? 'est lue' : 'sont lues'} avec le type de cet exemplaire : « ${serial} » est un « ${type} ».`,
  },
};

/** Rows that were read with the type of the piece which they name: one sentence for each way, and the first such row. */
export const joinedRows = (
  joins: readonly Join[],
  language: Language,
): readonly { readonly text: string; readonly first: Join }[] =>
  (['sensor', 'serial'] as const).flatMap((by) => {
    const own = joins.filter((join) => join.by === by);
    const [first] = own;
    return first ? [{ text: WORDS[language][by](own.length, first.serial, first.type), first }] : [];
  });
