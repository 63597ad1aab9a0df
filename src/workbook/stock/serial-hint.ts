import type { InLanguages, Language } from '../../core/language';
import type { Misread } from '../../plan/misread';
import type { SheetContent } from '../port';
import type { RecognisedTable } from '../tables';
import { isSerial } from './stock-source';
import { STOCK_WORDS } from './stock-words';

const WORDS: InLanguages<(serial: string, type: string) => string> = {
  en: (serial, type) => `“${serial}” is a serial number of “${type}”: name the type here, the number in a column of its own.`, // prettier-ignore
  de: (serial, type) => `„${serial}“ ist eine Seriennummer von „${type}“: hier den Typ nennen, die Nummer in einer eigenen Spalte.`, // prettier-ignore
  fr: (serial, type) => `« ${serial} » est un numéro de série de « ${type} » : nommer ici le type, le numéro dans une colonne à part.`, // prettier-ignore
};

const OWN_HEADINGS = new Set(Object.values(STOCK_WORDS).map(({ serials }) => serials));

/** Where a row names a piece instead of its type: which type that piece is of, by the sensor list. */
export const serialHint = (
  { place, read }: Misread,
  sensors: RecognisedTable | undefined,
  contentOf: (sheet: string) => SheetContent,
  language: Language,
): string | undefined => {
  if (!sensors || place.kind !== 'cell' || place.table !== 'channels' || place.key !== 'sensor') return undefined;
  const name = sensors.columns.get('sensor')?.column;
  const wanted = read.trim().toLowerCase();
  if (name === undefined || wanted === '') return undefined;
  const columns = [...sensors.headings].flatMap(([column, heading]) =>
    OWN_HEADINGS.has(heading) || isSerial(heading) ? [column] : [],
  );
  const content = contentOf(sensors.sheet);
  const textAt = (row: number, column: number): string =>
    String(content.values[row - content.row]?.[column - content.column] ?? '');
  for (let row = sensors.firstRow; row <= sensors.lastRow; row++)
    for (const column of columns) {
      const serials = textAt(row, column).split(/[,;\n]/);
      if (serials.some((serial) => serial.trim().toLowerCase() === wanted))
        return WORDS[language](read, textAt(row, name));
    }
  return undefined;
};
